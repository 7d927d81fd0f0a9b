using Findings;
using Kernel;
using Records;

namespace Rules.Duties;

[Id("condensate-work"), Title("work on the condensate trap"), Topic(Topics.Condensate), CommonPractice]
public sealed class CondensateWorkRule : WorkCallRule
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Trap)];

    protected override bool IsCalledBy(TouchedPart what) => what == TouchedPart.CondensatePath;
}
