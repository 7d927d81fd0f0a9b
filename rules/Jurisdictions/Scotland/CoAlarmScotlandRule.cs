using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Rules.CoAlarm;
using Visits;

namespace Rules.Jurisdictions.Scotland;

[Name(RuleIds.CoAlarmScotland), Topic(Topics.CoAlarm), Cites("TOLERABLE-STANDARD"), InForce(From = "2022-02-01")]
[Description("In Scotland every home with a boiler has a carbon monoxide detector")]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayUnderReport, "whether the battery is sealed for life is no member")]
public sealed class CoAlarmScotlandRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override bool? Applies(Visit visit) => visit.IsIn(Codes.Scotland) & visit.IsAHome;

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "the tolerable standard asks every home with a boiler for one");
}
