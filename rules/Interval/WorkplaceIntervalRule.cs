using Findings;
using Kernel;
using Records;
using Visits;
using Visits.Facts;

namespace Rules.Interval;

[Id(RuleIds.WorkplaceInterval), Topic(Topics.Interval), Cites("GSIUR-1998", "35"), CommonPractice]
[Title("At a workplace the appliance was seen within twelve months; the law sets no interval, a year is usual")]
[Why("Employers have to keep a workplace boiler and its flue in a safe condition, although the law names no interval. After more than a year unseen, that duty is hard to show to have been met.")]
[Serves(Part.WhereRecorded)]
[Uses(LimitIds.ServiceIntervalMonths)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayOverReport, "the law sets no interval")]
public sealed class WorkplaceIntervalRule : MonthsSinceRule
{
    protected override bool? Applies(Visit visit) => visit.Record.Premises?.Use is { } use ? use == PremisesUse.Workplace : null;

    protected override Limit Interval(Visit visit, Look look) => UsualInterval(visit);

    protected override Limit UsualInterval(Visit visit) => visit.Limits[LimitIds.ServiceIntervalMonths];

    protected override bool Counts(PastVisit earlier) => !earlier.Was(JobType.Repair);
}
