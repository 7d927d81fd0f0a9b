using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;

namespace Rules.Duties;

[Id("combustion-circuit"), Title("work on the combustion circuit"), Topic(Topics.Combustion), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.MayOverReport, "where the record does not show how much was opened, all of it was")]
public sealed class CombustionCircuitRule : WorkCallRule
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.CombustionSeals, Part.RoomAirRunning),
        Owe.Must(Part.Case).Only("the boiler has a fan, or may have one", visit => visit.IsFanned != false),
        Owe.Should(Part.Analysis),
        Owe.Must(Part.Analysis).Only("more than an electrode or a seal outside the chamber was worked on, or may have been", visit => !visit.LeftTheChamberShut()),
    ];

    protected override bool IsCalledBy(TouchedPart what) => what == TouchedPart.CombustionCircuit;
}
