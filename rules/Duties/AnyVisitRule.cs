using Findings;
using Kernel;
using Visits;

namespace Rules.Duties;

[Id("any-visit"), Title("any visit")]
public sealed class AnyVisitRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit);
        Then().Do(_ => OweAll(visit));
    }

    private void OweAll(Visit visit)
    {
        if (visit.HadNoAccess)
            return;

        Owe(visit, Weight.Must, null, Part.Left, Part.Competence);
        Owe(visit, Weight.Should, null, Part.Plate, Part.Paper, Part.AlarmOwed);
    }
}
