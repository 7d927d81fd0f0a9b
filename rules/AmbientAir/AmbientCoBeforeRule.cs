using Findings;
using Kernel;
using Visits;

namespace Rules.AmbientAir;

[Id(RuleIds.AmbientCoBefore), Topic(Topics.AmbientAir), Cites("BS-7967", "6.3.2")]
[Title("The room air is free of carbon monoxide before anything is touched")]
[Why("CO already in the room tells of a danger that was there before any tool came out. Found first, it protects the engineer as well and is not later put down to the work.")]
[AlsoRecordedAt("/ambientCo", "/flue", "/combustion", "/ventilation")]
[Serves(Part.RoomAirBefore)]
[Uses(LimitIds.AmbientCo, LimitIds.AmbientCoCeiling)]
[Coverage(Coverage.MayOverReport, "what is in the air need not come from this boiler")]
public sealed class AmbientCoBeforeRule : VisitRule
{
    protected override string SubjectPointer => "/ambientCo";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.AmbientCo?.BeforePpm, out var ppm))
            return look.Missing();

        var doubt = look.DoubtOf(visit, visit.Record.AmbientCo?.BeforePpm);
        if (look.AboveTheCeiling(visit, "before anything was touched", ppm, doubt) is { } ceiling)
            return ceiling;

        var limit = visit.Limits[LimitIds.AmbientCo];
        if (limit.Allows(ppm))
            return look.Pass($"before anything was touched the room air showed {ppm} ppm carbon monoxide, below {limit.Max}").Against(limit, ppm, doubt);

        // Found before this boiler was lit, it is not shown to be this boiler's fault; its cause is asked all the same.
        return look.Advisory($"before anything was touched the room air showed {ppm} ppm carbon monoxide (below {limit.Max})")
            .AndMissing(look.Note(visit.Record.AmbientCo?.Cause) is null ? ["/ambientCo/cause"] : [])
            .Against(limit, ppm, doubt).Warn(Cautions.RoomAir).Advise("Let air in and find where the carbon monoxide comes from before lighting anything.");
    }
}
