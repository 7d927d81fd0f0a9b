using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("gas-path"), Title("work on the gas path"), Cites("GSIUR-1998", "6(6)")]
public sealed class GasPathRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        Touched touched = default!;
        When()
            .Match(() => visit)
            .Match(() => touched, t => t.Part == TouchedPart.GasPath || t.Part == TouchedPart.Pipework);
        Then().Do(_ => OweBecause(visit, Weight.Must, touched.Because, Part.GasJoints, Part.Tightness));
    }
}
