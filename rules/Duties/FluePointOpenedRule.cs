using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("flue-point-opened"), Title("the flue gas was read"), Topic(Topics.Combustion), CommonPractice]
public sealed class FluePointOpenedRule() : CallRule("/combustion/readings")
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.FlueTestPoint),
        Owe.Should(Part.TraceReadings),
    ];

    protected override bool IsCalledBy(Visit visit) => visit.ReadTheFlue();
}
