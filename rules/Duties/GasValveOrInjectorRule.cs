using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("gas-valve-or-injector"), Title("a gas valve or an injector was fitted"), Topic(Topics.GasPressure), Cites("GSIUR-1998", "26(9)(c)"), CommonPractice]
public sealed class GasValveOrInjectorRule() : CallRule("/partsFitted")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Pressure, Part.Rate, Part.Analysis)];

    protected override bool IsCalledBy(Visit visit) => visit.FittedAGasValveOrInjector();
}
