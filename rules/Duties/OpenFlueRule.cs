using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties;

[Id("open-flue"), Title("the boiler takes its air from the room, or may"), Cites("BS-7967")]
public sealed class OpenFlueRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsOpenFlued != false && v.Record.JobType != JobType.Repair && !v.HadNoAccess);
        Then().Do(_ => Owe(visit, Weight.Must, "/appliance/flueType", Part.RoomAirRunning));
    }
}
