using Findings;
using Kernel;
using Rules.CoAlarm;
using Visits;

namespace Rules.Jurisdictions.Wales;

[Id(RuleIds.CoAlarmWalesRented), Topic(Topics.CoAlarm), Cites("RHWA-2016"), InForce(From = "2022-12-01")]
[Title("In Wales a rented home has a carbon monoxide alarm in each room with a gas appliance")]
[Why("Welsh law treats a rented home as unfit to live in where a room with a gas appliance has no CO alarm. The landlord then fails in the duty of fitness, even if nobody has come to harm.")]
[Serves(Part.AlarmOwed)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayUnderReport, "only the boiler's room is seen, not the cooker's")]
public sealed class CoAlarmWalesRentedRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    // Whoever owns the boiler: the alarm belongs to the room.
    protected override bool? Applies(Visit visit) => visit.IsIn(Codes.Wales) & visit.IsLet;

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "without one the dwelling is treated as unfit to live in");
}
