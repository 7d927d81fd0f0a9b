using Findings;
using Kernel;
using Rules.AmbientAir;
using Rules.Duties;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.AirSupplyExamined), Topic(Topics.Ventilation), Cites("GSIUR-1998", "26(9)(b)")]
[Title("The supply of combustion air is examined after any work and is clear")]
[Why("Starved of air, a burner soots up and makes carbon monoxide (CO). Leaves, a nest or loft insulation can choke the intake between services, and regulation 26(9) has the supply of combustion air examined after any work.")]
[Serves(Part.Air)]
[Uses(LimitIds.AmbientCo)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class AirSupplyExaminedRule : VisitRule
{
    protected override string SubjectPointer => "/ventilation";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Ventilation?.AirInletClear, out var clear))
            return look.Missing();

        return clear
            ? look.Pass($"the air inlet of the boiler is clear")
            : look.Unsafe($"the air inlet of the boiler is not clear", look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Clear the air inlet, then read the flue again.");
    }
}
