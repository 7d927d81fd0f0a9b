using Findings;
using Records;
using Visits.Facts;
using Wire;

namespace Visits;

/// <content>The visits before this one.</content>
public sealed partial class Visit
{
    /// <summary>
    /// Earlier visits to this appliance, the latest first: the one that the record states itself, or those that were looked up. A serial
    /// number is only told apart by its maker, so that another maker's appliance is not among them.
    /// </summary>
    public IReadOnlyList<PastVisit> Earlier => field ??= Record.PreviousVisit is null
        ? [.. (Lookup.History ?? []).Where(IsOfThisMaker).DistinctBy(visit => visit.FinishedAt).OrderByDescending(visit => visit.FinishedAt)]
        : VisitFacts.OfPrevious(Record) is { } stated ? [stated] : [];

    /// <summary>The latest visit at which another maker was recorded with the same serial number.</summary>
    public PastVisit? OfAnotherMaker => Record.PreviousVisit is null
        ? Lookup.History?.FirstOrDefault(visit => !string.IsNullOrWhiteSpace(visit.Maker) && !IsOfThisMaker(visit))
        : null;

    /// <summary>What is kept of this visit.</summary>
    public PastVisit Facts => field ??= VisitFacts.Of(Record);

    private bool IsOfThisMaker(PastVisit visit) =>
        string.Equals((visit.Maker ?? "").Trim(), (Appliance.Maker ?? "").Trim(), StringComparison.OrdinalIgnoreCase);
}

/// <summary>The trade's words for an earlier visit.</summary>
public static class PastVisitWords
{
    /// <summary>A visit of this kind?</summary>
    public static bool Was(this PastVisit visit, JobType jobType)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.JobType == WireNames.Of(jobType);
    }

    /// <summary>The visit before this one, on another day: what is recorded twice on one day is one visit.</summary>
    public static PastVisit? DayBefore(this Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.Earlier.FirstOrDefault(earlier => earlier.Date != visit.Date);
    }

    /// <summary>What was measured then under this name; null where nothing was.</summary>
    public static PastValue? Value(this PastVisit visit, string name)
    {
        ArgumentNullException.ThrowIfNull(visit);
        foreach (var value in visit.Values)
        {
            if (value.Name == name)
                return value;
        }

        return null;
    }
}
