using Findings;
using Kernel;
using Visits;

namespace Rules.CoAlarm;

[Id(RuleIds.CoAlarmWorks), Topic(Topics.CoAlarm), Cites("BS-EN-50291"), CommonPractice]
[Title("There is a carbon monoxide alarm of the standard for homes, within its life, and it was tested")]
[Why("Nobody can see or smell CO, so for people asleep the alarm may be the only warning. Its sensor ages and its battery runs down out of sight, and a dead alarm is still trusted.")]
[Serves(Part.AlarmOwed)]
[Coverage(Coverage.MayUnderReport, "the levels at which it sounds are no members")]
public sealed class CoAlarmWorksRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var alarm = look.JudgeAlarm(visit, "one is good practice wherever a boiler burns");
        if (alarm.IsProblem)
            return alarm;
        if (look.Lacks(visit.Record.CoAlarm?.Tested, out var tested) | look.Lacks(visit.Record.CoAlarm?.Standard, out var standard))
            return look.Missing();

        return tested && CoAlarmState.IsOfTheStandard(standard)
            ? alarm
            : look.Advisory($"carbon monoxide alarm tested: {tested}; marked standard: {standard}").Warn(Cautions.CarbonMonoxide)
                .Advise("Press the test button, and replace an alarm that does not sound or does not bear EN 50291-1.");
    }
}
