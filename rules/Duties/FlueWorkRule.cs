using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("flue-work"), Title("work on the flue"), Cites("GSIUR-1998", "27")]
public sealed class FlueWorkRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        Touched touched = default!;
        When()
            .Match(() => visit)
            .Match(() => touched, t => t.Part == TouchedPart.Flue);
        Then().Do(_ => OweBecause(visit, Weight.Must, touched.Because, Part.Flue, Part.FlueSupports, Part.Terminal, Part.AirInlet, Part.Draught));
    }
}
