using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-taken-out-of-use"), Title("A danger was taken out of use: what is dangerous is isolated, and the boiler was left off; an immediate one is disconnected as well")]
public sealed class TakenOutOfUseRule : DealtWithRule
{
    protected override DangerState State => DangerState.TakenOutOfUse;

    protected override bool WasDone(RecordedDefect recorded, Finding? finding, Visit visit) => Handling.IsIsolatedAndLeftOff(recorded, visit);

    protected override bool Counts(RecordedDefect recorded, Finding? finding, Visit visit) => Handling.IsTakenOutOfUse(recorded, finding, visit);
}
