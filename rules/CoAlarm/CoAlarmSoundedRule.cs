using Findings;
using Kernel;
using Visits;

namespace Rules.CoAlarm;

[Id(RuleIds.CoAlarmSounded), Topic(Topics.CoAlarm), Cites("IGEM-G-11"), CommonPractice]
[Title("Where the carbon monoxide alarm has sounded, the gas emergency provider came first")]
[Why("Once an alarm has gone off it has to be believed, even if it is silent now. The source may return at the next firing, so practice puts the gas emergency service before any engineer's search for it.")]
[Serves(Part.AlarmOwed)]
[Serves(Part.AlarmSounded)]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/emergencyReference")]
[Serves(Part.AlarmUnattended, AtMost = Weight.Must, Of = "/coAlarm/emergencyReference")]
[AppliesBy("/coAlarm/present")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class CoAlarmSoundedRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override bool? Applies(Visit visit) => visit.Record.CoAlarm?.ActivatedSinceLastVisit == true ? true : visit.Record.CoAlarm?.Present;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.CoAlarm?.ActivatedSinceLastVisit, out var sounded))
            return look.Missing();
        if (!sounded)
            return look.Pass($"the carbon monoxide alarm has not sounded since the last visit");

        if (visit.HadNoAccess && look.Note(visit.Record.CoAlarm?.EmergencyReference) is null)
        {
            return look.Unsafe($"a carbon monoxide alarm sounds or has sounded behind a door that nobody opened, and nobody was called", ExpectedClass.ImmediatelyDangerous)
                .AndMissing("/coAlarm/emergencyReference").Warn(Cautions.RoomAir).Advise("Call the gas emergency provider before leaving, try to warn whoever may be inside, and record the reference.");
        }

        return look.Lacks(visit.Record.CoAlarm?.EmergencyReference, out var reference)
            ? look.Missing($"the carbon monoxide alarm has sounded, and no visit of the gas emergency provider is recorded").Warn(Cautions.RoomAir)
            : look.Advisory($"the carbon monoxide alarm has sounded, and the gas emergency provider came ({reference})").Warn(Cautions.RoomAir)
                .Advise("Examine every appliance in the home for the source before any is used again.");
    }
}
