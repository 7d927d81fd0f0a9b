using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("gas-restored"), Title("gas was restored after an escape"), Topic(Topics.Tightness), Cites("GSIUR-1998", "37(4)")]
public sealed class GasRestoredRule() : CallRule("/escape")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Relight, Part.Tightness)];

    protected override bool IsCalledBy(Visit visit) => visit.RestoredTheGas();
}
