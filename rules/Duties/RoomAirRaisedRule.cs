using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("room-air-raised"), Title("the room air was raised before the work"), Cites("BS-7967")]
public sealed class RoomAirRaisedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.HadRaisedRoomAir());
        Then().Do(_ => Owe(visit, Weight.Must, "/ambientCo/beforePpm", Part.RoomAirRunning, Part.RoomAired));
    }
}
