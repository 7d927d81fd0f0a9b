using Findings;

namespace Visits;

/// <summary>What is known of the visit before this one: what the record says, or, where it says nothing, what was looked up.</summary>
public static class EarlierVisit
{
    /// <summary>The date on which the previous check counts. Of stored visits only a landlord's check is one.</summary>
    public static DateOnly? PreviousCounted(this Visit visit) => visit.Record.PreviousVisit is { } stated
        ? stated.DeemedOn ?? stated.FinishedAt?.Date
        : visit.Earlier.FirstOrDefault(earlier => earlier.CheckCountedOn is not null)?.CheckCountedOn;

    /// <summary>The day on which the appliance was last attended; of stored visits the latest that <paramref name="counts"/>.</summary>
    public static DateOnly? LastAttended(this Visit visit, Func<PastVisit, bool> counts) => visit.Record.PreviousVisit is { } stated
        ? stated.FinishedAt?.Date ?? stated.DeemedOn
        : visit.Earlier.FirstOrDefault(counts)?.Date;

    /// <summary>The visit before this one, on another day: what is recorded twice on one day is one visit.</summary>
    public static PastVisit? DayBefore(this Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.Earlier.FirstOrDefault(earlier => earlier.Date != visit.Date);
    }

    /// <summary>
    /// How the dates of the previous visit contradict each other or this visit; null when they do not. A check counts at most two
    /// months after it was made (regulation 36A).
    /// </summary>
    public static FormattableString? ContradictionOfDates(this Visit visit)
    {
        var madeOn = visit.Record.PreviousVisit?.FinishedAt?.Date;
        return visit.Record.PreviousVisit?.DeemedOn switch
        {
            { } deemed when deemed < madeOn => $"the previous visit counts as made on {deemed}, before it was made on {madeOn}",
            { } deemed when deemed > madeOn?.AddMonths(2) => $"the previous visit of {madeOn} counts as made on {deemed}, more than two months later",
            { } deemed when deemed > visit.Date.AddMonths(2) => $"the previous visit counts as made on {deemed}, more than two months after this one",
            _ => null,
        };
    }
}
