using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Rules.CoAlarm;
using Visits;

namespace Rules.Jurisdictions.Wales;

[Name(RuleIds.CoAlarmWalesRented), Topic(Topics.CoAlarm), Cites("RHWA-2016"), InForce(From = "2022-12-01")]
[Description("In Wales a rented home has a carbon monoxide alarm in each room with a gas appliance")]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayUnderReport, "only the boiler's room is seen, not the cooker's")]
public sealed class CoAlarmWalesRentedRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    // Whoever owns the boiler: the alarm belongs to the room.
    protected override bool? Applies(Visit visit) => visit.IsIn(Codes.Wales) & visit.IsLet;

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "without one the dwelling is treated as unfit to live in");
}
