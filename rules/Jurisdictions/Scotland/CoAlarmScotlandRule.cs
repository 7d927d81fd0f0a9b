using Findings;
using Kernel;
using Rules.CoAlarm;
using Visits;

namespace Rules.Jurisdictions.Scotland;

[Id(RuleIds.CoAlarmScotland), Topic(Topics.CoAlarm), Cites("TOLERABLE-STANDARD"), InForce(From = "2022-02-01")]
[Title("In Scotland every home with a boiler has a carbon monoxide detector")]
[Why("In Scotland the tolerable standard applies to owner and tenant alike, and a CO detector is part of it. A home with a boiler and no detector falls below the least that the law accepts of a home.")]
[Serves(Part.AlarmOwed)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayUnderReport, "whether the battery is sealed for life is no member")]
public sealed class CoAlarmScotlandRule : VisitRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override bool? Applies(Visit visit) => visit.IsIn(Codes.Scotland) & visit.IsAHome;

    protected override Verdict Assess(Visit visit, Look look) => look.JudgeAlarm(visit, "the tolerable standard asks every home with a boiler for one");
}
