using Findings;
using Kernel;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.BurnerPressure), Topic(Topics.GasPressure), Cites("GSIUR-1998", "26(9)(c)"), CommonPractice]
[Title("Where the maker gives a burner pressure, the measured one is close to it")]
[Why("Pressure at the burner sets how much gas it burns. Set too high it overfires and makes CO, and set too low it heats poorly and may light back.")]
[Serves(Part.Pressure, AtMost = Weight.Should)]
[Uses(LimitIds.BurnerPressureDeviation)]
[Coverage(Coverage.MayUnderReport, "judged only where the maker gives a pressure")]
public sealed class BurnerPressureRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/burnerMbar";

    // The maker's figure may be absent: premix boilers have none.
    protected override bool? Applies(Visit visit) => visit.Maker.BurnerPressureMbar > 0;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var makers = look.Note(visit.Maker.BurnerPressureMbar)!.Value;
        if (look.Note(visit.Record.GasSupply?.BurnerMbar) is not { } pressure)
            return look.Advisory($"the maker gives a burner pressure of {makers} mbar, and none was measured");

        // No share can be worked out of a figure of next to nothing.
        if (pressure > 1000 * makers)
        {
            return look.Advisory($"the burner pressure is {pressure} mbar, more than a thousand times the maker's {makers} mbar")
                .Warn(Cautions.MakerDecides).Advise("Read the burner pressure in the maker's instructions again; if it is right, set it as they say.");
        }

        var limit = visit.Limits[LimitIds.BurnerPressureDeviation];
        var deviation = (pressure - makers) / makers * 100;
        if (limit.Allows(deviation) && visit.Lookup.ProfileLimits?.BurnerPressureMbar is { } stored && stored != makers && stored > 0)
        {
            return look.Advisory($"the burner pressure is {pressure} mbar, close to the {makers} mbar that the record gives as the maker's; the stored profile gives {stored} mbar")
                .Against(limit, deviation).Warn(Cautions.MakerDecides).Advise("Make sure of the maker's figure in its source, and correct the record or the profile.");
        }

        return limit.Allows(deviation)
            ? look.Pass($"the burner pressure is {pressure} mbar, {deviation:+0.0;-0.0;0.0} % from the maker's {makers} mbar")
                .Against(limit, deviation)
            : look.Advisory($"the burner pressure is {pressure} mbar, {deviation:+0.0;-0.0;0.0} % from the maker's {makers} mbar, outside {limit.Min} to +{limit.Max} %")
                .Against(limit, deviation).Warn(Cautions.MakerDecides).Advise("Set the burner pressure as the maker's instructions say, and measure the combustion again.");
    }
}
