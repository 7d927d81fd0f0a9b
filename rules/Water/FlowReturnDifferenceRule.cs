using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.FlowReturnDifference), Topic(Topics.Water), CommonPractice]
[Title("Flow and return of the running boiler do not lie further apart than is usual")]
[Why("A tired pump, a closed valve or sludge slows the water and widens the gap between flow and return. Parts of the heat exchanger then overheat, and the boiler kettles, scales up and locks out.")]
[Serves(Part.Water)]
[Uses(LimitIds.FlowReturnDifference)]
[Coverage(Coverage.MayOverReport, "some systems are designed for more")]
public sealed class FlowReturnDifferenceRule : WaterRule
{
    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.FlowTemperatureC, out var flow) | look.Lacks(visit.Record.Water?.ReturnTemperatureC, out var back))
            return look.Missing();

        var limit = visit.Limits[LimitIds.FlowReturnDifference];
        return limit.Allows(flow - back)
            ? look.Pass($"flow and return lie {flow - back} degrees apart, at most {limit.Max}").Against(limit, flow - back)
            : look.Advisory($"flow and return lie {flow - back} degrees apart, more than {limit.Max}: too little water moves")
                .Against(limit, flow - back)
                .Advise("Check pump, valves, filter and balance of the system.");
    }
}
