using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-left-by-refusal"), Title("A danger was left because it was refused, and what is then owed was done")]
public sealed class LeftByRefusalRule : DealtWithRule
{
    protected override DangerState State => DangerState.LeftByRefusal;

    protected override bool Shows(RecordedDefect recorded, Finding? finding, Visit visit) => Handling.IsLeftByRefusal(recorded, finding, visit);
}
