using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;
using Visits.Facts;

namespace Rules.Interval;

[Name(RuleIds.ServiceInterval), Topic(Topics.Interval), Cites("BS-6798"), CommonPractice]
[Description("The service follows the one before within the maker's interval, or twelve months where the maker gives none")]
[Coverage(Coverage.Full, "two dates and an interval")]
public sealed class ServiceIntervalRule : MonthsSinceRule
{
    protected override bool? Applies(Visit visit) => visit.IsAnnualService;

    protected override Limit Interval(Visit visit, Look look)
    {
        look.Note(visit.Maker.ServiceIntervalMonths);
        return visit.MakersMax(static maker => maker.ServiceIntervalMonths, LimitIds.ServiceIntervalMonths);
    }

    protected override Limit UsualInterval(Visit visit) => visit.UsualMax(static maker => maker.ServiceIntervalMonths, LimitIds.ServiceIntervalMonths);

    protected override bool Counts(PastVisit earlier) => earlier.Was(JobType.AnnualService) || earlier.Was(JobType.Commissioning);
}
