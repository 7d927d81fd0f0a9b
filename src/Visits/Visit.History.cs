using Findings;
using Records;
using Visits.Facts;

namespace Visits;

/// <content>The visits before this one.</content>
public sealed partial class Visit
{
    /// <summary>
    /// Earlier visits to this appliance, the latest first: the one that the record states itself, or those that were looked up. A serial
    /// number is only told apart by its maker, so that another maker's appliance is not among them.
    /// </summary>
    public IReadOnlyList<PastVisit> Earlier => field ??= Record.PreviousVisit is null
        ? LookedUp
        : VisitFacts.OfPrevious(Record) is { } stated ? [stated] : [];

    /// <summary>
    /// The visits that were looked up and may be to this appliance, the latest first, whatever the record states of the one before: a maker that
    /// is not named, here or there, tells no other appliance. What was left dangerous is asked of all of them; readings are compared with <see cref="Earlier"/> alone.
    /// </summary>
    public IReadOnlyList<PastVisit> MaybeOfThisAppliance => field ??= [.. (Lookup.History ?? []).Where(IsMaybeOfThisMaker).OrderByDescending(visit => visit.FinishedAt)];

    /// <inheritdoc />
    public override IReadOnlyList<Deferral> DeferredBefore => field ??= DeferralsBefore();

    /// <summary>Did an earlier visit put this part of a duty off until the boiler is used again, and no visit between make it up?</summary>
    public bool IsOwedFromBefore(string part)
    {
        foreach (var deferral in DeferredBefore)
        {
            if (deferral.Part == part)
                return true;
        }

        return false;
    }

    private IReadOnlyList<PastVisit> LookedUp => field ??= [.. (Lookup.History ?? []).Where(IsOfThisMaker).DistinctBy(visit => visit.FinishedAt).OrderByDescending(visit => visit.FinishedAt)];

    /// <summary>Answers to other records of this very visit that named a danger, the latest first.</summary>
    public IReadOnlyList<EarlierAnswer> SaidBefore => Lookup.SaidBefore ?? [];

    /// <summary>The latest visit at which another maker was recorded with the same serial number.</summary>
    public PastVisit? OfAnotherMaker => Record.PreviousVisit is null
        ? Lookup.History?.FirstOrDefault(visit => !string.IsNullOrWhiteSpace(visit.Maker) && !IsOfThisMaker(visit))
        : null;

    /// <summary>What is kept of this visit.</summary>
    public PastVisit Facts => field ??= VisitFacts.Of(Record);

    // Each visit carries on what it did not make up, so that what was put off long ago is not forgotten; the day is that of the first.
    private List<Deferral> DeferralsBefore()
    {
        List<Deferral> waiting = [];
        HashSet<string> settled = new(StringComparer.Ordinal);
        foreach (var past in MaybeOfThisAppliance.Where(past => past.FinishedAt < Record.FinishedAt.Value))
        {
            foreach (var deferral in past.Deferrals ?? [])
            {
                if (settled.Add(deferral.Part) && deferral.Waits)
                    waiting.Add(deferral with { EvaluationId = deferral.EvaluationId ?? past.EvaluationId });
            }
        }

        return waiting;
    }

    private bool IsMaybeOfThisMaker(PastVisit visit) =>
        string.IsNullOrWhiteSpace(visit.Maker) || string.IsNullOrWhiteSpace(Appliance.Maker) || IsOfThisMaker(visit);

    private bool IsOfThisMaker(PastVisit visit) =>
        string.Equals((visit.Maker ?? "").Trim(), (Appliance.Maker ?? "").Trim(), StringComparison.OrdinalIgnoreCase);
}
