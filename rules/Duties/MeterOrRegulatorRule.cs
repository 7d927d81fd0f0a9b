using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("meter-or-regulator"), Title("work on the meter or its regulator"), Topic(Topics.GasPressure), Cites("GSIUR-1998", "14(5)")]
public sealed class MeterOrRegulatorRule() : CallRule("/disturbedJoints")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Regulator, Part.Purge, Part.Relight)];

    protected override bool IsCalledBy(Visit visit) => visit.WorkedOnTheMeter();
}
