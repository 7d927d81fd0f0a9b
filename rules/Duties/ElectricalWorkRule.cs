using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("electrical-work"), Title("work on the electrical side"), CommonPractice]
public sealed class ElectricalWorkRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        Touched touched = default!;
        When()
            .Match(() => visit)
            .Match(() => touched, t => t.Part == TouchedPart.Electrics);
        Then().Do(_ => OweBecause(visit, Weight.Must, touched.Because, Part.EarthAndPolarity));
    }
}
