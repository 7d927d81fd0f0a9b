using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

/// <remarks>Whoever restores gas after an escape tests what they did not open: the test is no sign of work on the gas path there.</remarks>
[Id("tested-after-repair"), Title("A tightness test after a repair or an installation shows that a gas joint was opened"), Topic(Topics.Tightness)]
public sealed class TestedAfterRepairRule : WorkRule
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit) =>
        visit.Record.JobType is JobType.Repair or JobType.Commissioning && visit.Record.Escape?.GasIsolated != true && visit.TestsAfterWork?.Any(test => test.Value.Stage == WorkStage.AfterWork) == true
            ? [(TouchedPart.Pipework, "/tightnessTests", "tightness was tested after the work")]
            : [];
}
