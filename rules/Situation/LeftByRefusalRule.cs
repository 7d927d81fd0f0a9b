using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-left-by-refusal"), Title("A danger was left because it was refused; what is then owed makes it count")]
public sealed class LeftByRefusalRule : DealtWithRule
{
    protected override DangerState State => DangerState.LeftByRefusal;

    protected override bool WasDone(RecordedDefect recorded, Finding? finding, Visit visit) => Handling.IsRefused(recorded);

    protected override bool Counts(RecordedDefect recorded, Finding? finding, Visit visit) => recorded.IsLeftByRefusal(finding, visit);
}
