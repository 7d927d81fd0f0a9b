using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("tightness-tested"), Title("tightness was tested"), Topic(Topics.Tightness), CommonPractice]
public sealed class TightnessTestedRule() : CallRule("/tightnessTests")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Should(Part.TraceTests)];

    protected override bool IsCalledBy(Visit visit) => visit.TestedTightness();
}
