using Findings;
using Kernel;
using Rules.CoAlarm;
using Rules.Paperwork;
using Visits;

namespace Rules.Jurisdictions.England;

[Id(RuleIds.CoAlarmEnglandNewBoiler), Topic(Topics.CoAlarm), Cites("BUILDING-REGS-2010", "Approved Document J"), InForce(From = "2022-10-01")]
[Title("In England a carbon monoxide alarm goes in with a new boiler")]
[Why("Any new boiler may have a flue or seal that was fitted wrongly, and CO gives no other sign. In England Approved Document J looks for an alarm at installation, in owned and rented homes alike.")]
[Serves(Part.Commission)]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/tested")]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/replaceBy")]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/standard")]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/distanceMm")]
[AppliesBy("/commissioning/newBoiler")]
[Coverage(Coverage.Full, "presence beside a new boiler is stated")]
public sealed class CoAlarmEnglandNewBoilerRule : NewBoilerRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override bool IsLawHere(Visit visit) => visit.IsIn(Codes.England);

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "one goes in with every new boiler");
}
