using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("landlords-check"), Title("a landlord'\''s check"), Cites("GSIUR-1998", "36(3)(c)")]
public sealed class LandlordsCheckRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsALandlordsCheck());
        Then().Do(_ => OweAll(visit));
    }

    private void OweAll(Visit visit)
    {
        Owe(visit, Weight.Must, "/premises/use", Part.LandlordItems);
        Owe(visit, Weight.Should, "/premises/use", Part.LandlordPipework, Part.Pipework, Part.LandlordDeadline, Part.NextVisit, Part.Alterations);
    }
}
