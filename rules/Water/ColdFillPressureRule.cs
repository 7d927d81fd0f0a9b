using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.ColdFillPressure), Topic(Topics.Water), CommonPractice]
[Title("The cold fill pressure is within the usual band")]
[Why("Too low a fill leaves air at the top of the system and noise in the pump; too high leaves the vessel little room for expansion. Either ends in a lockout or a dripping relief valve after the engineer has gone.")]
[Serves(Part.SealedSystem)]
[Uses(LimitIds.ColdFill)]
[Coverage(Coverage.MayOverReport, "tall systems need more")]
public sealed class ColdFillPressureRule : WaterRule
{
    protected override string SubjectPointer => "/water/coldFillBar";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.ColdFillBar, out var fill))
            return look.Missing();

        var limit = visit.Limits[LimitIds.ColdFill];
        return limit.Allows(fill)
            ? look.Pass($"the cold fill is {fill} bar, within {limit.Min} to {limit.Max} bar").Against(limit, fill)
            : look.Advisory($"the cold fill is {fill} bar, outside the usual {limit.Min} to {limit.Max} bar").Against(limit, fill)
                .Advise("Set the cold fill by the maker's instructions and the height of the system.");
    }
}
