using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("repair"), Title("a repair"), CommonPractice]
public sealed class RepairRule() : CallRule("/jobType")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Should(Part.Parts)];

    protected override bool IsCalledBy(Visit visit) => visit.IsARepair();
}
