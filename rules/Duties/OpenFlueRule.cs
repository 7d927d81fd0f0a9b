using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties;

[Id("open-flue"), Title("the boiler takes its air from the room, or may"), Topic(Topics.AmbientAir), Cites("BS-7967"), Coverage(Coverage.MayOverReport, "a flue of which the record does not say the type calls as well")]
public sealed class OpenFlueRule() : CallRule("/appliance/flueType")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.RoomAirRunning)];

    protected override bool IsCalledBy(Visit visit) => visit.IsOpenFlued != false && visit.Record.JobType != JobType.Repair && !visit.HadNoAccess;
}
