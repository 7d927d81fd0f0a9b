using Findings;
using Kernel;
using Records;

namespace Rules.Duties;

[Id("electrical-work"), Title("work on the electrical side"), Topic(Topics.Electrical), CommonPractice]
public sealed class ElectricalWorkRule : WorkCallRule
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.EarthAndPolarity)];

    protected override bool IsCalledBy(TouchedPart what) => what == TouchedPart.Electrics;
}
