using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.InhibitorDosed), Topic(Topics.Water), Cites("BS-7593")]
[Title("Inhibitor was dosed within five years, unless the water is fully tested")]
[Why("Inhibitor loses strength with time, even in a system that never leaks. BS 7593 calls for a new dose every five years or a full water test, as corrosion is usually noticed only when a radiator leaks or a waterway blocks.")]
[Serves(Part.Water)]
[Uses(LimitIds.InhibitorMonths)]
[InForce(From = "2019-06-01")]
[Coverage(Coverage.MayOverReport, "a full water test in place of a dose is no member")]
public sealed class InhibitorDosedRule : WaterRule
{
    protected override string SubjectPointer => "/water/inhibitorDosedOn";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.InhibitorDosedOn, out var dosedOn))
            return look.Missing();
        if (dosedOn > visit.Date)
            return look.Missing($"the last dose of inhibitor is dated {dosedOn}, after the visit", "/water/inhibitorDosedOn");

        var limit = visit.Limits[LimitIds.InhibitorMonths];
        var lastDay = dosedOn.AddMonths((int)limit.Max!.Value);
        return visit.Date <= lastDay
            ? look.Pass($"inhibitor was dosed on {dosedOn}, which serves to {lastDay}").Against(limit)
            : look.Advisory($"inhibitor was last dosed on {dosedOn}, more than {limit.Max} months ago").Against(limit)
                .Advise("Dose inhibitor again, or have the water fully tested.");
    }
}
