using Findings;
using Kernel;
using Visits;

namespace Rules.Duties;

[Id("test-points-opened"), Title("a pressure was read at a test point"), CommonPractice]
public sealed class TestPointsOpenedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.ReadAPressure());
        Then()
            .Do(_ => Owe(visit, visit.OpenedANipple() ? Weight.Must : Weight.Should, "/gasSupply", Part.GasTestPoints))
            .Do(_ => Owe(visit, Weight.Should, "/gasSupply", Part.TracePressures));
    }
}
