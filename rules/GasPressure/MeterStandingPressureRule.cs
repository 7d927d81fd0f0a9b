using Findings;
using NRules.Fluent.Dsl;
using RuleModel;

namespace Rules;

[Name(RuleIds.MeterStandingPressure), Topic(Topics.GasPressure), CommonPractice]
[Description("The standing pressure at the meter shows that the regulator locks up")]
public sealed class MeterStandingPressureRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/meterStandingMbar";

    protected override bool? Applies(Visit visit) => visit.BurnsNaturalGas;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.GasSupply?.MeterStandingMbar) is not { } pressure)
            return visit.NoPressure(look, "the standing pressure at the meter", "/gasSupply/meterStandingMbar");

        var doubt = look.DoubtOf(visit, visit.Record.GasSupply?.MeterStandingMbar);
        var limit = visit.Limits[LimitIds.MeterStandingPressure];
        var ceiling = visit.Limits[LimitIds.MeterStandingPressureCeiling];
        if (limit.Allows(pressure))
            return look.Pass($"the meter stands at {pressure} mbar, at most {limit.Max} mbar").Against(limit, pressure, doubt);

        return ceiling.Allows(pressure)
            ? look.Advisory($"the meter stands at {pressure} mbar, above {limit.Max} mbar").Against(limit, pressure, doubt).ToBeReported(visit)
            : look.Unsafe($"the meter stands at {pressure} mbar, above {ceiling.Max} mbar: the regulator does not lock up")
                .Against(ceiling, pressure, doubt).ToBeReported(visit).Warn("A regulator that does not lock up puts too much pressure on every appliance.");
    }
}
