using Findings;
using Kernel;
using Records;

namespace Rules.Duties;

[Id("gas-path"), Title("work on the gas path"), Topic(Topics.Joints), Cites("GSIUR-1998", "6(6)")]
public sealed class GasPathRule : WorkCallRule
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.GasJoints, Part.Tightness)];

    protected override bool IsCalledBy(TouchedPart what) => what is TouchedPart.GasPath or TouchedPart.Pipework;
}
