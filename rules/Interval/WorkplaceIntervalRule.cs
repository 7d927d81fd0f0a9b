using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;
using Visits.Facts;

namespace Rules.Interval;

[Name(RuleIds.WorkplaceInterval), Topic(Topics.Interval), Cites("GSIUR-1998", "35"), CommonPractice]
[Description("At a workplace the appliance was seen within twelve months; the law sets no interval, a year is usual")]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayOverReport, "the law sets no interval")]
public sealed class WorkplaceIntervalRule : MonthsSinceRule
{
    protected override bool? Applies(Visit visit) => visit.Record.Premises?.Use is { } use ? use == PremisesUse.Workplace : null;

    protected override Limit Interval(Visit visit, Look look) => UsualInterval(visit);

    protected override Limit UsualInterval(Visit visit) => visit.Limits[LimitIds.ServiceIntervalMonths];

    protected override bool Counts(PastVisit earlier) => !earlier.Was(JobType.Repair);
}
