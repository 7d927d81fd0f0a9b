using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.HeatExchanger;

[Id(RuleIds.ExchangerApproach), Topic(Topics.HeatExchanger), CommonPractice]
[Title("The flue gas of a condensing boiler leaves little warmer than the return water comes in")]
[Why("Heat that leaves by the flue is heat the customer has paid for and not had. Flue gas well above the return suggests that deposits or poor water flow keep it from the system.")]
[Serves(Part.FireSideDetails)]
[Uses(LimitIds.ExchangerApproach)]
[Expects("/combustion/readings"), AppliesBy("/appliance/condensing")]
[Coverage(Coverage.MayOverReport, "flow and load shift the approach")]
public sealed class ExchangerApproachRule : ComplianceRule<CombustionReading>
{
    protected override bool? Applies(Visit visit) => visit.Appliance.Condensing;

    // At minimum rate it leaves nearer still, so that the limit serves for both.
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.ReadingsAfterWork;

    protected override Verdict WhenNone(Visit visit, Look look) => look.Missing($"the flue was not read after the work", "/combustion/readings");

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.FlueTemperatureC, out var flue) | look.Lacks(visit.Record.Water?.ReturnTemperatureC, out var back))
            return look.Missing();

        var limit = visit.Limits[LimitIds.ExchangerApproach];
        return limit.Allows(flue - back)
            ? look.Pass($"the flue gas leaves {flue - back} degrees above the return, at most {limit.Max}").Against(limit, flue - back)
            : look.Advisory($"the flue gas leaves {flue - back} degrees above the return, more than {limit.Max}: the heat exchanger takes up less heat than it should")
                .Against(limit, flue - back).Advise("Inspect the heat exchanger for deposits on the fire side and the water side, by the maker's instructions.");
    }
}
