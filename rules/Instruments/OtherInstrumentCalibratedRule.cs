using Findings;
using Kernel;
using Records;

namespace Rules.Instruments;

[Id(RuleIds.OtherInstrumentCalibrated), Topic(Topics.Instruments), CommonPractice]
[Title("Every other instrument listed is within its calibration on the day")]
[Why("Detectors and electrical testers out of calibration give a wrong answer as firmly as a right one. Somebody then takes a joint for tight or a wire for dead, and can be hurt by it.")]
[Serves(Part.WhereRecorded, AtMost = Weight.Should)]
[Uses(LimitIds.CalibrationMonths)]
[Expects("/instruments")]
[Coverage(Coverage.MayUnderReport, "only instruments that are listed are seen")]
public sealed class OtherInstrumentCalibratedRule : CalibrationRule
{
    // One whose kind is not recorded is asked here.
    protected override bool IsOfKind(InstrumentKind? kind) => kind is not (InstrumentKind.FlueGasAnalyser or InstrumentKind.PressureGauge);
}
