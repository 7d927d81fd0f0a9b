using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("alarm-sounded"), Title("a carbon monoxide alarm sounded"), Topic(Topics.CoAlarm), Cites("BS-7967")]
public sealed class AlarmSoundedRule() : CallRule("/coAlarm/activatedSinceLastVisit")
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.AlarmUnattended).Only("there was no access", visit => visit.HadNoAccess),
        Owe.Must(Part.AlarmSounded, Part.AlarmRunning, Part.RoomAirRunning, Part.Analysis).Only("there was access", visit => !visit.HadNoAccess),
    ];

    protected override bool IsCalledBy(Visit visit) => visit.AlarmHadSounded();
}
