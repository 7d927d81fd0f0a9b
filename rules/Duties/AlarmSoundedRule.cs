using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("alarm-sounded"), Title("a carbon monoxide alarm sounded"), Cites("BS-7967")]
public sealed class AlarmSoundedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.AlarmHadSounded());
        Then().Do(_ => OweAll(visit));
    }

    private void OweAll(Visit visit)
    {
        const string Sounded = "/coAlarm/activatedSinceLastVisit";
        if (visit.HadNoAccess)
            Owe(visit, Weight.Must, Sounded, Part.AlarmUnattended);
        else
            Owe(visit, Weight.Must, Sounded, Part.AlarmSounded, Part.AlarmRunning, Part.RoomAirRunning, Part.Analysis);
    }
}
