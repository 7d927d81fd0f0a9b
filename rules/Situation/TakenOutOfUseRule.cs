using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-taken-out-of-use"), Title("A danger was taken out of use: what is dangerous is isolated, and the boiler was left off")]
public sealed class TakenOutOfUseRule : DealtWithRule
{
    protected override DangerState State => DangerState.TakenOutOfUse;

    protected override bool Shows(RecordedDefect recorded, Finding? finding, Visit visit) => Handling.IsTakenOutOfUse(recorded, finding, visit);
}
