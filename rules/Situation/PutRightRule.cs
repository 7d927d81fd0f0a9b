using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-put-right"), Title("A danger was put right, and a later look or measurement shows it")]
public sealed class PutRightRule : DealtWithRule
{
    protected override DangerState State => DangerState.PutRight;

    protected override bool WasDone(RecordedDefect recorded, Finding? finding, Visit visit) => Handling.IsPutRight(recorded, finding, visit);

    protected override bool Counts(RecordedDefect recorded, Finding? finding, Visit visit) => true;
}
