using Findings;
using Kernel;
using Records;
using Visits;
using Visits.Facts;

namespace Rules.Interval;

[Id(RuleIds.ServiceInterval), Topic(Topics.Interval), Cites("BS-6798"), CommonPractice]
[Title("The service follows the one before within the maker's interval, or twelve months where the maker gives none")]
[Why("Seals harden, traps fill and combustion drifts between services without anyone noticing. The longer a boiler runs past its interval, the more of this has built up by the time somebody looks.")]
[Serves(Part.WhereRecorded)]
[Uses(LimitIds.ServiceIntervalMonths)]
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
