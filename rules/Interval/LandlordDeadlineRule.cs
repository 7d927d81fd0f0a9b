using Calculations;
using Findings;
using NRules.Fluent.Dsl;
using RuleModel;

namespace Rules;

[Name(RuleIds.LandlordDeadline), Topic(Topics.Interval), Cites("GSIUR-1998", "36(3)(a)"), Cites("GSIUR-1998", "36A")]
[Description("The landlord's check is made within twelve months of the previous one, as regulation 36A counts them")]
[AppliesBy("/premises/use")]
public sealed class LandlordDeadlineRule : VisitRule
{
    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var previous = look.Note(visit.Record.PreviousVisit?.DeemedOn);
        if (previous is null && look.Lacks(visit.Record.Appliance.InstalledOn, out _))
            return look.Missing($"neither an earlier check nor the installation is dated", "/previousVisit/deemedOn");

        // Without an earlier check the first one is due within twelve months of installation, and the window is not granted.
        var from = previous ?? visit.Appliance.InstalledOn!.Value;
        if (from.AddMonths(-2) > visit.Date)
            return look.Missing($"the date from which the interval counts, {from}, lies after this visit", "/previousVisit/deemedOn");

        var dates = LandlordCalendar.Against(LandlordCalendar.Deadline(from), visit.Date);
        var next = previous is null ? LandlordCalendar.Deadline(visit.Date) : dates.NextDeadline;
        return Judge(dates, visit.Date, look).DueBy(next, "the landlord's next gas safety check");
    }

    private static Verdict Judge(LandlordDates dates, DateOnly day, Look look)
    {
        if (dates.DaysLate > 0)
        {
            return look.Advisory($"the check of {day} is {dates.DaysLate} days after the deadline of {dates.Deadline}; it counts on its own date")
                .Advise("Tell the landlord that the interval was exceeded, and plan the next check before its deadline.");
        }

        return dates.Disputed == DisputedDay.None
            ? look.Pass($"the check of {day} is within the deadline of {dates.Deadline} and counts as made on {dates.Deemed}")
            : look.Advisory($"{day} is a day that readers of regulation 36A count differently; here it counts as made on {dates.Deemed}")
                .Advise("Plan the next check a day further from the boundary.");
    }
}
