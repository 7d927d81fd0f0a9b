using Findings;
using Kernel;
using Records;

namespace Rules.Duties;

[Id("flue-work"), Title("work on the flue"), Topic(Topics.Flue), Cites("GSIUR-1998", "27")]
public sealed class FlueWorkRule : WorkCallRule
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Flue, Part.FlueSupports, Part.Terminal, Part.AirInlet, Part.Draught)];

    protected override bool IsCalledBy(TouchedPart what) => what == TouchedPart.Flue;
}
