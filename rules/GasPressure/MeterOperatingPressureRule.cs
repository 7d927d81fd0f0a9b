using Findings;
using Kernel;
using Rules.Duties;
using Rules.HeatInput;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.MeterOperatingPressure), Topic(Topics.GasPressure), Cites("IGEM-G-13"), Cites("GSIUR-1998", "26(9)(c)")]
[Title("The operating pressure at the meter is within the band of the supply, the other appliances running at half load")]
[Why("When the meter regulator cannot hold its pressure under load, every appliance in the house goes short. Its setting is not for the boiler engineer to alter, so the fault has to be passed on.")]
[Serves(Part.Pressure, AtMost = Weight.Should)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2,
    LimitIds.MeterOperatingPressure, LimitIds.HeatInputDeviation, LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes,
    LimitIds.CalibrationMonths, LimitIds.CoPpm, LimitIds.MaximumRateLoad)]
[Coverage(Coverage.Full, "band and load are recorded")]
public sealed class MeterOperatingPressureRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/meterOperatingMbar";

    protected override bool? Applies(Visit visit) => visit.BurnsNaturalGas;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.GasSupply?.MeterOperatingMbar) is not { } pressure)
            return visit.NoPressure(look, "the operating pressure at the meter", "/gasSupply/meterOperatingMbar");

        var doubt = look.DoubtOf(visit, visit.Record.GasSupply?.MeterOperatingMbar);
        var band = visit.Limits[LimitIds.MeterOperatingPressure];
        if (!band.Allows(pressure))
        {
            FormattableString found = $"the meter shows {pressure} mbar in operation, outside {band.Min} to {band.Max} mbar";
            var verdict = visit.BurnsRight() == false
                ? look.Unsafe($"{found}, and the combustion is out of limit as well").Warn(Cautions.CarbonMonoxide)
                : look.Advisory(found).Warn(Cautions.MakerDecides);
            return verdict.Against(band, pressure, doubt).ToBeReported(visit);
        }

        if (look.Lacks(visit.Record.GasSupply?.OthersAtHalfLoad, out var underLoad))
            return look.Missing();

        return underLoad
            ? look.Pass($"the meter shows {pressure} mbar in operation, within {band.Min} to {band.Max} mbar").Against(band, pressure, doubt)
            : look.Advisory($"the meter shows {pressure} mbar, read while the other appliances were not at half load: it says nothing of the pressure under load")
                .Against(band, pressure, doubt).Advise("Read the pressure again with the other appliances at half load.");
    }
}
