using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;

namespace Rules.Instruments;

[Name(RuleIds.OtherInstrumentCalibrated), Topic(Topics.Instruments), CommonPractice]
[Description("Every other instrument listed is within its calibration on the day")]
[Expects("/instruments")]
[Coverage(Coverage.MayUnderReport, "only instruments that are listed are seen")]
public sealed class OtherInstrumentCalibratedRule : CalibrationRule
{
    // One whose kind is not recorded is asked here.
    protected override bool IsOfKind(InstrumentKind? kind) => kind is not (InstrumentKind.FlueGasAnalyser or InstrumentKind.PressureGauge);
}
