using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("flue-point-opened"), Title("the flue gas was read"), CommonPractice]
public sealed class FluePointOpenedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.ReadTheFlue());
        Then()
            .Do(_ => Owe(visit, Weight.Must, "/combustion/readings", Part.FlueTestPoint))
            .Do(_ => Owe(visit, Weight.Should, "/combustion/readings", Part.TraceReadings));
    }
}
