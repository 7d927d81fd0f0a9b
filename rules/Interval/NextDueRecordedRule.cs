using Calculations;
using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Interval;

[Id(RuleIds.NextDueRecorded), Topic(Topics.Interval), Cites("GSIUR-1998", "36(3)(a)"), CommonPractice]
[Title("The record says when the next visit is due, and not later than the interval allows")]
[Why("Householders and landlords book the next visit by the date they are given. Set too late, it leaves a boiler unattended and can put a landlord in breach unawares.")]
[Serves(Part.NextVisit)]
[Uses(LimitIds.ServiceIntervalMonths)]
[Coverage(Coverage.Full, "two dates and an interval")]
public sealed class NextDueRecordedRule : VisitRule
{
    protected override string SubjectPointer => "/paperwork/nextDueOn";

    protected override bool? Applies(Visit visit) => visit.Record.JobType is JobType.AnnualService or JobType.LandlordCheck;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Paperwork?.NextDueOn, out var next))
            return look.Missing();

        var latest = Latest(visit, look);
        if (next <= visit.Date)
            return look.Advisory($"the next visit is recorded as due on {next}, which is not after this visit")
                .Advise("Work out the next date again.");

        if (next <= latest && UsualLatest(visit) is { } usual && next > usual)
        {
            return look.Advisory($"the next visit is recorded as due on {next}, which the maker's interval allows by the record; at the usual interval it is due by {usual}")
                .DueBy(next, "the next visit").Warn(Cautions.MakerDecides).Advise("Make sure of the maker's interval in its source.");
        }

        return next <= latest
            ? look.Pass($"the next visit is recorded as due on {next}, not later than {latest}").DueBy(next, "the next visit")
            : look.Advisory($"the next visit is recorded as due on {next}, and it is due by {latest}").DueBy(latest, "the next visit")
                .Advise("Work out the next date again from the date on which this visit counts.");
    }

    // A landlord's check counts as regulation 36A says; while that is unknown it counts on its own day, and no maker lengthens the year.
    private static DateOnly Latest(Visit visit, Look look)
    {
        if (visit.IsUnderLandlordDuty == true && visit.ContradictionOfDates() is null && LandlordClock.Against(visit) is { } dates)
            return dates.NextDeadline;

        var limit = visit.IsAnnualService && look.Note(visit.Maker.ServiceIntervalMonths) is not null
            ? visit.MakersMax(static maker => maker.ServiceIntervalMonths, LimitIds.ServiceIntervalMonths)
            : visit.Limits[LimitIds.ServiceIntervalMonths];
        var byInterval = visit.Date.AddMonths((int)limit.Max!.Value);
        var byLaw = LandlordCalendar.Deadline(visit.Date);
        return visit.IsUnderLandlordDuty == true && byLaw < byInterval ? byLaw : byInterval;
    }

    /// <summary>The last day at the usual interval; null where the law sets the day, or no maker's interval is in play.</summary>
    private static DateOnly? UsualLatest(Visit visit) => visit.IsAnnualService && visit.IsUnderLandlordDuty != true
        ? visit.Date.AddMonths((int)visit.UsualMax(static maker => maker.ServiceIntervalMonths, LimitIds.ServiceIntervalMonths).Max!.Value)
        : null;
}
