using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.PressureFinerThanGauge), Topic(Topics.Plausibility), CommonPractice]
[Title("No gas pressure is recorded more finely than a listed gauge can show")]
[Why("More decimals than any listed gauge can show did not come off one of them. Either the gauge used is not on the list and its calibration is unknown, or the figure was never read.")]
[Serves(Part.TracePressures, AtMost = Weight.Should)]
[Coverage(Coverage.MayUnderReport, "any listed gauge may have been the one that was read")]
public sealed class PressureFinerThanGaugeRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.Record.Instruments is not { } instruments)
            return look.Missing($"no instruments are listed", "/instruments");

        decimal?[] pressures =
        [
            look.Note(visit.Record.GasSupply?.MeterStandingMbar), look.Note(visit.Record.GasSupply?.MeterOperatingMbar),
            look.Note(visit.Record.GasSupply?.ApplianceInletMbar), look.Note(visit.Record.GasSupply?.BurnerMbar),
        ];
        var steps = instruments.Where(one => one.Kind == InstrumentKind.PressureGauge).Select(one => one.Resolution).OfType<decimal>().Where(step => step > 0).ToList();
        if (steps.Count == 0)
            return look.Advisory($"no listed pressure gauge states the smallest step that it shows")
                .Advise("Record the resolution of the gauge with the instrument.");

        // With several gauges nothing says which one was used.
        var tooFine = pressures.OfType<decimal>().Where(value => !steps.Exists(step => step.CanShow(value))).ToList();
        return tooFine.Count == 0
            ? look.Pass($"every gas pressure is a whole number of steps of a listed gauge")
            : look.Advisory($"{tooFine[0]} mbar is recorded more finely than a listed gauge can show, which goes by steps of {steps.Min()} mbar")
                .Advise("Record what the gauge shows, and list the gauge that was used.");
    }
}
