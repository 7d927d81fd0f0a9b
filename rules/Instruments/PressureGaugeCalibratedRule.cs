using Findings;
using Kernel;
using Records;
using Rules.Duties;
using Visits;

namespace Rules.Instruments;

[Id(RuleIds.PressureGaugeCalibrated), Topic(Topics.Instruments), Cites("IGEM-UP-1B"), CommonPractice]
[Title("The pressure gauge is listed and within its calibration on the day")]
[Why("Tightness tests turn on fractions of a millibar, and operating pressures on a few. With a gauge that reads wrong, a leaking pipe or a starved boiler can go unnoticed.")]
[Serves(Part.TracePressures, AtMost = Weight.Should)]
[Serves(Part.Tightness, AtMost = Weight.Should)]
[Uses(LimitIds.CalibrationMonths)]
[Expects("/instruments")]
[Coverage(Coverage.MayOverReport, "the instrument's maker may allow longer than a year")]
public sealed class PressureGaugeCalibratedRule : CalibrationRule
{
    protected override bool IsOfKind(InstrumentKind? kind) => kind == InstrumentKind.PressureGauge;

    // What was to be measured is asked by the rules on pressure and tightness; without a figure of a gauge there is none to trace.
    protected override Verdict WhenNone(Visit visit, Look look) => visit.Record.TightnessTests is { Count: 0 } && !visit.HasAnyPressure()
        ? look.NotApplicable($"the record states that no tightness test was made and gives no pressure")
        : look.Missing($"no pressure gauge is listed among the instruments", "/instruments");
}
