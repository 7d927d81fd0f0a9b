using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("gas-valve-or-injector"), Title("a gas valve or an injector was fitted"), Cites("GSIUR-1998", "26(9)(c)"), CommonPractice]
public sealed class GasValveOrInjectorRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.FittedAGasValveOrInjector());
        Then().Do(_ => Owe(visit, Weight.Must, "/partsFitted", Part.Pressure, Part.Rate, Part.Analysis));
    }
}
