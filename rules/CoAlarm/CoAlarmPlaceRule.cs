using Findings;
using Kernel;
using Visits;

namespace Rules.CoAlarm;

[Id(RuleIds.CoAlarmPlace), Topic(Topics.CoAlarm), CommonPractice]
[Title("The carbon monoxide alarm is neither too near the boiler nor too far from it")]
[Why("Fitted too close to the boiler an alarm sounds at passing traces; too far away it gives its warning late. A household that has learned to ignore or unplug it has no alarm at all.")]
[Serves(Part.AlarmOwed)]
[Uses(LimitIds.CoAlarmDistance)]
[AppliesBy("/coAlarm/present")]
[Coverage(Coverage.MayUnderReport, "the distance is judged, not the height on wall or ceiling")]
public sealed class CoAlarmPlaceRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override bool? Applies(Visit visit) => visit.Record.CoAlarm?.Present;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.CoAlarm?.DistanceMm, out var distance))
            return look.Missing();

        var limit = visit.Limits[LimitIds.CoAlarmDistance];
        return (limit.Allows(distance)
            ? look.Pass($"the carbon monoxide alarm is {distance} mm from the boiler, within {limit.Min} to {limit.Max}")
            : look.Advisory($"the carbon monoxide alarm is {distance} mm from the boiler, outside {limit.Min} to {limit.Max}")
                .Advise("Move the alarm as its own instructions say."))
            .Against(limit, distance);
    }
}
