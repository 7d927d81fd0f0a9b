using Findings;
using Kernel;
using Rules.CoAlarm;
using Visits;

namespace Rules.Jurisdictions.England;

[Id(RuleIds.CoAlarmEnglandRented), Topic(Topics.CoAlarm), Cites("SI-2022-707", "5"), InForce(From = "2022-10-01")]
[Title("In England a rented home has a carbon monoxide alarm in each living room with a fixed combustion appliance")]
[Why("People in rented rooms did not choose the boiler and do not maintain it. English law makes the landlord provide a CO alarm where they live with it, and put it right once told that it has failed.")]
[Serves(Part.AlarmOwed)]
[AppliesBy("/premises/use", "/premises/roomIsLivingSpace")]
[Coverage(Coverage.MayUnderReport, "only the boiler's room is seen; the test on the first day of a tenancy is no member")]
public sealed class CoAlarmEnglandRentedRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    // Whoever owns the boiler: the alarm belongs to the room.
    protected override bool? Applies(Visit visit) => visit.IsIn(Codes.England) & visit.IsLet & visit.Record.Premises?.RoomIsLivingSpace;

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "the landlord has had to provide one since 1 October 2022");
}
