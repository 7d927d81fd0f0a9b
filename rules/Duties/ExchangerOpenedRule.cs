using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("exchanger-opened"), Title("the fire side was opened over the trap"), CommonPractice]
public sealed class ExchangerOpenedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.OpenedTheExchanger());
        Then().Do(_ => Owe(visit, Weight.Must, "/heatExchanger", Part.Trap));
    }
}
