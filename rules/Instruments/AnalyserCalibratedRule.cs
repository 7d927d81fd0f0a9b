using Findings;
using Kernel;
using Records;
using Rules.Duties;
using Visits;

namespace Rules.Instruments;

[Id(RuleIds.AnalyserCalibrated), Topic(Topics.Instruments), Cites("EN-50379-3"), Cites("GSIUR-1998", "26(9)(ca)"), CommonPractice]
[Title("The flue gas analyser is listed and within its calibration on the day")]
[Why("CO cells lose sensitivity with age and then read low. Calibration is what lets a combustion reading be believed, most of all where it takes the place of pressure and heat input.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Uses(LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes, LimitIds.CalibrationMonths)]
[Expects("/instruments")]
[Coverage(Coverage.MayOverReport, "the instrument's maker may allow longer than a year")]
public sealed class AnalyserCalibratedRule : CalibrationRule
{
    protected override bool IsOfKind(InstrumentKind? kind) => kind == InstrumentKind.FlueGasAnalyser;

    protected override Verdict WhenNone(Visit visit, Look look) =>
        look.Missing($"no flue gas analyser is listed among the instruments", "/instruments");

    // Where combustion alone stands in for pressure and heat input, nothing else examines the appliance, with a reason stated or without.
    protected override Verdict OutOfDate(FormattableString message, Visit visit, Look look) => visit.NeitherPressureNorHeatInput()
        ? look.Missing($"{WireText.Sentence(message)}, and the combustion reading alone stands for pressure and heat input", $"{look.Subject}/calibrationDueOn")
        : look.Advisory(message);
}
