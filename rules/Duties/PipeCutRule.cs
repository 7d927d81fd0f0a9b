using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("pipe-cut"), Title("a gas pipe or the meter was parted"), Cites("GSIUR-1998", "10")]
public sealed class PipeCutRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.PartedAPipe());
        Then().Do(_ => Owe(visit, Weight.Must, "/work/kind", Part.Bond));
    }
}
