using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Rules.CoAlarm;
using Rules.Paperwork;
using Visits;

namespace Rules.Jurisdictions.England;

[Name(RuleIds.CoAlarmEnglandNewBoiler), Topic(Topics.CoAlarm), Cites("BUILDING-REGS-2010", "Approved Document J"), InForce(From = "2022-10-01")]
[Description("In England a carbon monoxide alarm goes in with a new boiler")]
[AppliesBy("/commissioning/newBoiler")]
[Coverage(Coverage.Full, "presence beside a new boiler is stated")]
public sealed class CoAlarmEnglandNewBoilerRule : NewBoilerRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override bool IsLawHere(Visit visit) => visit.IsIn(Codes.England);

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "one goes in with every new boiler");
}
