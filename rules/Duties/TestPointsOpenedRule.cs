using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("test-points-opened"), Title("a pressure was read at a test point"), Topic(Topics.GasPressure), CommonPractice, Coverage(Coverage.MayOverReport, "a pressure that does not say where it was read may have been read at a nipple")]
public sealed class TestPointsOpenedRule() : CallRule("/gasSupply")
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Should(Part.TracePressures),
        Owe.Must(Part.GasTestPoints).Only("it was read at a nipple, or may have been", visit => visit.OpenedANipple()),
    ];

    protected override bool IsCalledBy(Visit visit) => visit.ReadAPressure();
}
