using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("water-work"), Title("work on the water side"), CommonPractice]
public sealed class WaterWorkRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        Touched touched = default!;
        When()
            .Match(() => visit, v => !v.IsOpenVented())
            .Match(() => touched, t => t.Part == TouchedPart.WaterSide);
        Then().Do(_ => OweBecause(visit, Weight.Must, touched.Because, Part.ReliefValve, Part.FillingLoop));
    }
}
