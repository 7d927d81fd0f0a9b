using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-made-known-elsewhere"), Title("A danger of another appliance or of the supply stands, and was made known to whoever answers for it")]
public sealed class MadeKnownElsewhereRule : DealtWithRule
{
    protected override DangerState State => DangerState.Standing;

    protected override bool WasDone(RecordedDefect recorded, Finding? finding, Visit visit) =>
        Handling.IsMadeKnownElsewhere(recorded, finding) && Handling.StateOf(recorded, finding, visit) == DangerState.Standing;

    protected override bool Counts(RecordedDefect recorded, Finding? finding, Visit visit) => true;
}
