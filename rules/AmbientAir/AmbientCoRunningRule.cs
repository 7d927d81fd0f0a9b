using Findings;
using Kernel;
using Visits;

namespace Rules.AmbientAir;

[Id(RuleIds.AmbientCoRunning), Topic(Topics.AmbientAir), Cites("BS-7967", "6.2.2"), Cites("GSIUR-1998", "26(9)(a)")]
[Title("Carbon monoxide in the room air does not rise while the boiler runs")]
[Why("A rise in room CO while the boiler fires points to combustion products getting into the room. Some leaks show only with the fan running and the flue hot, so a sweep of a cold boiler misses them.")]
[AlsoRecordedAt("/ambientCo", "/flue", "/combustion", "/ventilation")]
[Serves(Part.RoomAirRunning)]
[Serves(Part.AlarmRunning)]
[Uses(LimitIds.AmbientCo, LimitIds.AmbientCoCeiling, LimitIds.AmbientCoRise)]
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

        // A boiler closed to the room has no way to raise its air, so where the products come from is asked; a draught diverter may let a trace by.
        var rise = visit.Limits[LimitIds.AmbientCoRise];
        IReadOnlyList<string> cause = visit.IsOpenFlued != true && look.Note(visit.Record.AmbientCo?.Cause) is null ? ["/ambientCo/cause"] : [];
        return rise.Allows(ppm - before)
            ? look.Pass($"with the boiler running the room air showed {ppm} ppm carbon monoxide at most, from {before} before").Against(visit.Limits[LimitIds.AmbientCo], ppm, doubt)
            : look.Advisory($"with the boiler running carbon monoxide in the room air rose from {before} to {ppm} ppm, more than an analyser explains ({rise.Max})")
                .AndMissing(cause).Against(rise, ppm - before).Warn(Cautions.RoomAir).Advise("Find where the carbon monoxide comes from before leaving the boiler in use.");
    }
}
