using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessPressure), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "test pressure")]
[Title("A tightness test is made at the pressure of the standard")]
[Why("Less gas passes through a leak at low pressure, so it may not move the gauge in the time of the test. The limits of the standard go with the pressure of the standard and with no other.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.TightnessTestPressure, LimitIds.TightnessLowPressure)]
[Expects("/tightnessTests")]
[Coverage(Coverage.MayOverReport, "the bands for liquefied gas are a proposal")]
public sealed class TightnessPressureRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        if (look.Lacks(test.TestPressureMbar, out var pressure))
            return look.Missing();

        var band = visit.Limits[LimitIds.TightnessTestPressure];
        if (band.Allows(pressure))
            return look.Pass($"tested at {pressure} mbar, within {band.Min} to {band.Max} mbar").Against(band, pressure);
        if (pressure > band.Max || !visit.BurnsNaturalGas || visit.Limits[LimitIds.TightnessLowPressure] is var low && !low.Allows(pressure))
            return Refused($"tested at {pressure} mbar, outside {band.Min} to {band.Max} mbar");

        // Edition 4 lets a test run a little lower, once the cause was looked for and the operating pressure looked at.
        if (TightnessEditions.Governing(test.Edition, TightnessEditions.DayOf(test, visit)) is not { } edition)
            return look.Missing($"tested at {pressure} mbar, below {band.Min} mbar; only edition 4 allows that, and the record does not name it", $"{look.Subject}/edition");
        if (edition == TightnessEditions.Third)
            return Refused($"tested at {pressure} mbar, below {band.Min} mbar, which edition 3 does not allow");
        if (look.Lacks(visit.Record.GasSupply?.MeterOperatingMbar, out var operating))
            return look.Missing($"tested at {pressure} mbar, below {band.Min} mbar, and the operating pressure that must then be looked at is not recorded");

        return look.Advisory($"tested at {pressure} mbar, below {band.Min} mbar but not below {low.Min} mbar; the operating pressure is {operating} mbar")
            .Against(low, pressure).Advise("Isolate, find why the full test pressure could not be reached, and note the cause.");

        Verdict Refused(FormattableString message) => look.Missing(message, $"{look.Subject}/testPressureMbar")
            .Against(band, pressure).Advise("Repeat the test at the pressure of the standard.");
    }
}
