using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("condensate-work"), Title("work on the condensate trap"), CommonPractice]
public sealed class CondensateWorkRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        Touched touched = default!;
        When()
            .Match(() => visit)
            .Match(() => touched, t => t.Part == TouchedPart.CondensatePath);
        Then().Do(_ => OweBecause(visit, Weight.Must, touched.Because, Part.Trap));
    }
}
