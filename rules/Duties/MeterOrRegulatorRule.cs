using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("meter-or-regulator"), Title("work on the meter or its regulator"), Cites("GSIUR-1998", "14(5)")]
public sealed class MeterOrRegulatorRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.WorkedOnTheMeter());
        Then().Do(_ => Owe(visit, Weight.Must, "/disturbedJoints", Part.Regulator, Part.Purge, Part.Relight));
    }
}
