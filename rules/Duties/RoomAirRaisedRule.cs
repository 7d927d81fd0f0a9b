using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("room-air-raised"), Title("the room air was raised before the work"), Topic(Topics.AmbientAir), Cites("BS-7967")]
public sealed class RoomAirRaisedRule() : CallRule("/ambientCo/beforePpm")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.RoomAirRunning, Part.RoomAired)];

    protected override bool IsCalledBy(Visit visit) => visit.HadRaisedRoomAir();
}
