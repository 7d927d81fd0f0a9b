using Findings;
using Kernel;
using Records;
using Rules.HeatInput;
using Visits;
using Visits.Computations;

namespace Rules.GasPressure;

[Id(RuleIds.InletPressureLoss), Topic(Topics.GasPressure), Cites("BS-6891")]
[Title("The pipework from meter to appliance loses no more pressure than it may")]
[Why("Undersized pipework, or a valve half shut, starves the boiler just when it draws most. The loss between meter and boiler shows the pipe to be at fault before a valve or regulator gets the blame.")]
[Serves(Part.Pressure, AtMost = Weight.Should)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2,
    LimitIds.InletPressureLoss, LimitIds.HeatInputDeviation, LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes,
    LimitIds.CalibrationMonths, LimitIds.CoPpm, LimitIds.MaximumRateLoad)]
[AppliesBy("/gasSupply/meterKind")]
[Coverage(Coverage.MayOverReport, "the two pressures may have been read at different loads")]
public sealed class InletPressureLossRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/applianceInletMbar";

    // A liquefied gas supply often has no meter to measure from.
    protected override bool? Applies(Visit visit) => visit.BurnsNaturalGas ? true : visit.Record.GasSupply?.MeterKind switch
    {
        null => null,
        MeterKind.None => false,
        _ => true,
    };

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.GasSupply?.MeterOperatingMbar) is not { } meter)
            return visit.NoPressure(look, "the operating pressure at the meter", "/gasSupply/meterOperatingMbar");
        if (look.Note(visit.Record.GasSupply?.ApplianceInletMbar) is not { } inlet)
            return visit.NoPressure(look, "the operating pressure at the appliance inlet", "/gasSupply/applianceInletMbar");

        var doubt = look.DoubtOf(visit, GasRateComputations.PressureLoss.Name);
        var limit = visit.Limits[LimitIds.InletPressureLoss];
        var loss = meter - inlet;
        if (loss < 0)
            return look.Advisory($"the appliance inlet shows {-loss} mbar more than the meter: one of the readings is wrong")
                .Advise("Read both pressures again.");

        return limit.Allows(loss)
            ? look.Pass($"{loss} mbar are lost from meter to appliance, at most {limit.Max} mbar").Against(limit, loss, doubt)
            : look.Advisory($"{loss} mbar are lost from meter to appliance, more than {limit.Max} mbar")
                .Against(limit, loss, doubt).Warn(Cautions.MakerDecides).Advise("Look for undersized or blocked pipework and half-shut valves.");
    }
}
