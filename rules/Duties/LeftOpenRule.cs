using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("left-open"), Title("a gasway ends open"), Cites("GSIUR-1998", "6(2)"), Cites("GSIUR-1998", "6(3)")]
public sealed class LeftOpenRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.LeavesAGaswayOpen() != false);
        Then().Do(_ => Owe(visit, Weight.Must, "/appliance/stateOnLeaving", Part.Seal));
    }
}
