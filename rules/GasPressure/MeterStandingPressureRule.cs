using Findings;
using Kernel;
using Rules.HeatInput;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.MeterStandingPressure), Topic(Topics.GasPressure), CommonPractice]
[Title("The standing pressure at the meter shows that the regulator locks up")]
[Why("A regulator that does not lock up lets pressure climb while nothing is burning. Valves and seals can then be held under more than they are built for, and the next burner to light gets too much gas.")]
[Serves(Part.Pressure, AtMost = Weight.Should)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2,
    LimitIds.MeterStandingPressure, LimitIds.MeterStandingPressureCeiling, LimitIds.HeatInputDeviation, LimitIds.GasRateSeconds,
    LimitIds.GasRateWarmMinutes,
    LimitIds.CalibrationMonths, LimitIds.CoPpm, LimitIds.MaximumRateLoad)]
[Coverage(Coverage.MayUnderReport, "a pressure that goes on creeping up is no member, and for liquefied gas no source demands the reading")]
public sealed class MeterStandingPressureRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/meterStandingMbar";

    // A liquefied gas supply is not asked for it; where it was read, it is judged.
    protected override bool? Applies(Visit visit) => visit.BurnsNaturalGas || visit.Record.GasSupply?.MeterStandingMbar is not null;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.GasSupply?.MeterStandingMbar) is not { } pressure)
            return visit.NoPressure(look, "the standing pressure at the meter", "/gasSupply/meterStandingMbar");

        var doubt = look.DoubtOf(visit, visit.Record.GasSupply?.MeterStandingMbar);
        var limit = visit.Limits[LimitIds.MeterStandingPressure];
        if (pressure <= 0 || (limit.Allows(pressure) && pressure < look.Note(visit.Record.GasSupply?.MeterOperatingMbar)))
        {
            return look.Missing(
                    pressure <= 0
                        ? (FormattableString)$"the meter is recorded as standing at {pressure} mbar, at which no boiler runs"
                        : $"the meter is recorded as standing at {pressure} mbar, below the {visit.Record.GasSupply!.MeterOperatingMbar} mbar in operation: no flow raises the pressure",
                    "/gasSupply/meterStandingMbar")
                .Advise("Read both pressures again.");
        }

        if (limit.Allows(pressure))
            return look.Pass($"the meter stands at {pressure} mbar, at most {limit.Max} mbar").Against(limit, pressure, doubt);

        // Of liquefied gas no figure is known at which a regulator is dangerous.
        return visit.Limits.Find(LimitIds.MeterStandingPressureCeiling) is not { } ceiling || ceiling.Allows(pressure)
            ? look.Advisory($"the meter stands at {pressure} mbar, above {limit.Max} mbar").Against(limit, pressure, doubt).ToBeReported(visit)
            : look.Unsafe($"the meter stands at {pressure} mbar, above {ceiling.Max} mbar: the regulator does not lock up")
                .Against(ceiling, pressure, doubt).ToBeReported(visit).Warn("A regulator that does not lock up puts too much pressure on every appliance.");
    }
}
