using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("repair"), Title("a repair"), CommonPractice]
public sealed class RepairRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsARepair());
        Then().Do(_ => Owe(visit, Weight.Should, "/jobType", Part.Parts));
    }
}
