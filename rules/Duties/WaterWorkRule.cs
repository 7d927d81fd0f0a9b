using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;

namespace Rules.Duties;

[Id("water-work"), Title("work on the water side"), Topic(Topics.Water), CommonPractice]
public sealed class WaterWorkRule : WorkCallRule
{
    public override IReadOnlyList<Call> Calls { get; } =
        [Owe.Must(Part.ReliefValve, Part.FillingLoop).Only("the system is not stated to be open-vented", visit => !visit.IsOpenVented())];

    protected override bool IsCalledBy(TouchedPart what) => what == TouchedPart.WaterSide;
}
