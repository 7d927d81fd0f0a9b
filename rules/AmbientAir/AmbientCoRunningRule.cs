using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.AmbientAir;

[Name(RuleIds.AmbientCoRunning), Topic(Topics.AmbientAir), Cites("BS-7967", "6.2.2"), Cites("GSIUR-1998", "26(9)(a)")]
[Description("Carbon monoxide in the room air does not rise while the boiler runs")]
[Coverage(Coverage.MayOverReport, "another source can raise the room meanwhile")]
public sealed class AmbientCoRunningRule : VisitRule
{
    protected override string SubjectPointer => "/ambientCo";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.AmbientCo?.RunningPeakPpm, out var ppm))
            return look.Missing();

        var doubt = look.DoubtOf(visit, visit.Record.AmbientCo?.RunningPeakPpm);
        if (look.RaisedWithTheBoiler(visit, "with the boiler running", ppm, doubt) is { } raised)
            return raised;
        if (look.Lacks(visit.Record.AmbientCo?.BeforePpm, out var before))
            return look.Missing();

        var rise = visit.Limits[LimitIds.AmbientCoRise];
        return rise.Allows(ppm - before)
            ? look.Pass($"with the boiler running the room air showed {ppm} ppm carbon monoxide at most, from {before} before").Against(visit.Limits[LimitIds.AmbientCo], ppm, doubt)
            : look.Advisory($"with the boiler running carbon monoxide in the room air rose from {before} to {ppm} ppm, more than an analyser explains ({rise.Max})")
                .Against(rise, ppm - before).Warn(Cautions.RoomAir).Advise("Find where the carbon monoxide comes from before leaving the boiler in use.");
    }
}
