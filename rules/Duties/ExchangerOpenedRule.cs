using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("exchanger-opened"), Title("the fire side was opened over the trap"), Topic(Topics.Condensate), CommonPractice]
public sealed class ExchangerOpenedRule() : CallRule("/heatExchanger")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Trap)];

    protected override bool IsCalledBy(Visit visit) => visit.OpenedTheExchanger();
}
