using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.ReturnCoolEnoughToCondense), Topic(Topics.Water), CommonPractice]
[Title("The return of a condensing boiler is cool enough for it to condense")]
[Why("Above the dew point of its flue gas a condensing boiler hardly condenses, and that heat leaves through the terminal. The customer then misses much of the saving that the boiler was made for.")]
[Serves(Part.Water)]
[Uses(LimitIds.CondensingReturn)]
[AppliesBy("/appliance/condensing")]
[Coverage(Coverage.MayOverReport, "an old system may not heat with less")]
public sealed class ReturnCoolEnoughToCondenseRule : WaterRule
{
    protected override string SubjectPointer => "/water/returnTemperatureC";

    protected override bool? Applies(Visit visit) => visit.Appliance.Condensing;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.ReturnTemperatureC, out var temperature))
            return look.Missing();

        var limit = visit.Limits[LimitIds.CondensingReturn];
        return limit.Allows(temperature)
            ? look.Pass($"the return comes back at {temperature} C, below {limit.Max} C").Against(limit, temperature)
            : look.Advisory($"the return comes back at {temperature} C; below {limit.Max} C the boiler condenses").Against(limit, temperature)
                .Advise("Lower the flow temperature or balance the system, within the maker's instructions.");
    }
}
