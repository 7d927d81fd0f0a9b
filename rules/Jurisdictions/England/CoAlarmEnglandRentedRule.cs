using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Rules.CoAlarm;
using Visits;

namespace Rules.Jurisdictions.England;

[Name(RuleIds.CoAlarmEnglandRented), Topic(Topics.CoAlarm), Cites("SI-2022-707", "5"), InForce(From = "2022-10-01")]
[Description("In England a rented home has a carbon monoxide alarm in each living room with a fixed combustion appliance")]
[AppliesBy("/premises/use", "/premises/roomIsLivingSpace")]
[Coverage(Coverage.MayUnderReport, "only the boiler's room is seen; the test on the first day of a tenancy is no member")]
public sealed class CoAlarmEnglandRentedRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    // Whoever owns the boiler: the alarm belongs to the room.
    protected override bool? Applies(Visit visit) => visit.IsIn(Codes.England) & visit.IsLet & visit.Record.Premises?.RoomIsLivingSpace;

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "the landlord has had to provide one since 1 October 2022");
}
