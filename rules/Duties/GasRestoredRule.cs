using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("gas-restored"), Title("gas was restored after an escape"), Cites("GSIUR-1998", "37(4)")]
public sealed class GasRestoredRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.RestoredTheGas());
        Then().Do(_ => Owe(visit, Weight.Must, "/escape", Part.Relight, Part.Tightness));
    }
}
