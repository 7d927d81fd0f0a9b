using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("pipe-cut"), Title("a gas pipe or the meter was parted"), Topic(Topics.Electrical), Cites("GSIUR-1998", "10")]
public sealed class PipeCutRule() : CallRule("/work/kind")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Bond)];

    protected override bool IsCalledBy(Visit visit) => visit.PartedAPipe();
}
