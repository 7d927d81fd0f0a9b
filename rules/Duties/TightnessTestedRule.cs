using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("tightness-tested"), Title("tightness was tested"), CommonPractice]
public sealed class TightnessTestedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.TestedTightness());
        Then().Do(_ => Owe(visit, Weight.Should, "/tightnessTests", Part.TraceTests));
    }
}
