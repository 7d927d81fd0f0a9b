using Calculations;
using Findings;
using Kernel;
using Visits;

namespace Rules.Interval;

[Id(RuleIds.LandlordDeadline), Topic(Topics.Interval), Cites("GSIUR-1998", "36(3)(a)"), Cites("GSIUR-1998", "36A")]
[Title("The landlord's check is made within twelve months of the previous one, as regulation 36A counts them")]
[Why("Tenants depend on the landlord to have the boiler looked at, so the law sets the longest gap between checks. A missed date is a breach that no later check can undo.")]
[Serves(Part.LandlordDeadline)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayOverReport, "a first check lined up with other appliances is not known from one record")]
public sealed class LandlordDeadlineRule : VisitRule
{
    protected override string SubjectPointer => "/previousVisit";

    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look)
    {
        look.Note(visit.Record.PreviousVisit?.DeemedOn);
        look.Note(visit.Record.PreviousVisit?.FinishedAt);
        look.Note(visit.Record.PreviousVisit?.AlignmentUsed);
        look.Note(visit.Record.Appliance.InstalledOn);
        if (visit.ContradictionOfDates() is { } contradiction)
            return look.Missing(contradiction, "/previousVisit/deemedOn").Contradicting(Part.LandlordDeadline);
        if (LandlordClock.Against(visit) is not { } dates)
            return look.Missing($"neither an earlier check nor the installation is dated", "/previousVisit/deemedOn", "/appliance/installedOn");

        return Judge(dates, visit, look).DueBy(dates.NextDeadline, "the landlord's next gas safety check");
    }

    private static Verdict Judge(LandlordDates dates, Visit visit, Look look)
    {
        if (dates.DaysLate > 0)
        {
            return look.Advisory($"the check of {visit.Date} is {DayLimits.Days(dates.DaysLate)} after the deadline of {dates.Deadline}{Because(dates, visit)}; it counts on its own date")
                .Advise("Tell the landlord that the interval was exceeded, and plan the next check before its deadline.");
        }

        return dates.Disputed == DisputedDay.None
            ? look.Pass($"the check of {visit.Date} is within the deadline of {dates.Deadline} and counts as made on {dates.Deemed}")
            : look.Advisory($"{visit.Date} is a day that readers of regulation 36A count differently; here it counts as made on {dates.Deemed}")
                .Advise("Plan the next check a day further from the boundary.");
    }

    private static string Because(LandlordDates dates, Visit visit)
    {
        if (visit.PreviousCounted() is not null)
            return "";

        // A new appliance's first check may be moved once to line up with the landlord's other appliances.
        var mayBeAligned = visit.Date <= dates.Deadline.AddMonths(2) && visit.Record.PreviousVisit?.AlignmentUsed != true;
        return mayBeAligned
            ? ", counted from installation, unless this first check was moved once to line up with other appliances, by two months at most"
            : ", counted from installation because no earlier check is dated";
    }
}
