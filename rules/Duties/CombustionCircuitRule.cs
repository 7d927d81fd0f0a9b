using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("combustion-circuit"), Title("work on the combustion circuit"), Cites("GSIUR-1998", "26(9)")]
public sealed class CombustionCircuitRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        Touched touched = default!;
        When()
            .Match(() => visit)
            .Match(() => touched, t => t.Part == TouchedPart.CombustionCircuit);
        Then().Do(_ => OweAll(visit, touched));
    }

    private void OweAll(Visit visit, Touched touched)
    {
        OweBecause(visit, Weight.Must, touched.Because, Part.CombustionSeals, Part.RoomAirRunning);
        if (visit.IsFanned != false)
            OweBecause(visit, Weight.Must, touched.Because, Part.Case);
        OweBecause(visit, visit.LeftTheChamberShut() ? Weight.Should : Weight.Must, touched.Because, Part.Analysis);
    }
}
