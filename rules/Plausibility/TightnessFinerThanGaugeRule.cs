using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.TightnessFinerThanGauge), Topic(Topics.Plausibility), Cites("IGEM-UP-1B"), CommonPractice]
[Title("No pressure of a tightness test is recorded more finely than its electronic gauge can show")]
[Why("Figures between the steps of an electronic gauge cannot have come off its display. A drop that was not read is no proof of tightness, and with the wrong resolution nobody knows what the gauge could have shown.")]
[Serves(Part.TraceTests, AtMost = Weight.Should)]
[Expects("/tightnessTests")]
[Coverage(Coverage.MayUnderReport, "judged only where the step of the gauge is recorded")]
public sealed class TightnessFinerThanGaugeRule : ComplianceRule<TightnessTest>
{
    protected override IEnumerable<Subject<TightnessTest>>? Subjects(Visit visit) => visit.TightnessTests;

    protected override Verdict Assess(TightnessTest test, Visit visit, Look look)
    {
        if (test.Gauge == PressureGaugeKind.Water)
            return look.NotApplicable($"on a water gauge the eye reads between the marks");
        if (look.Lacks(test.Gauge, out _) | look.Lacks(test.GaugeResolutionMbar, out var step))
            return look.Missing();

        decimal?[] pressures =
        [
            look.Note(test.LetByPressureMbar), look.Note(test.LetByRiseMbar), look.Note(test.TestPressureMbar), look.Note(test.DropMbar),
            look.Note(test.PipeworkOnlyMovementMbar),
        ];
        return pressures.FirstOrDefault(value => !step.CanShow(value)) is { } tooFine
            ? look.Advisory($"{tooFine} mbar is recorded, and the gauge goes by steps of {step} mbar")
                .Advise("Record what the gauge shows and its true resolution.")
            : look.Pass($"every pressure of the test is a whole number of steps of {step} mbar");
    }
}
