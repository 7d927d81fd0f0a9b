using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("test-points-opened"), Title("a pressure was read at a test point"), CommonPractice]
public sealed class TestPointsOpenedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.ReadAPressure());
        Then().Do(_ => OweAll(visit));
    }

    private void OweAll(Visit visit)
    {
        Owe(visit, Weight.Should, "/gasSupply", Part.TracePressures);
        if (visit.OpenedANipple())
            Owe(visit, Weight.Must, "/gasSupply", Part.GasTestPoints);
    }
}
