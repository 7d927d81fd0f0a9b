using System.Collections.Concurrent;
using Findings;
using Kernel;
using Records;
using Records.Canonical;
using Records.Faults;
using Records.Reading;
using Storage;
using Visits;
using Visits.Judging;

namespace Checking;

/// <summary>
/// Looks up what a record refers to, refuses what cannot be, and judges the rest: the one guard of every road on which records come in.
/// One for each request, audit or command, for it remembers the profiles that it found.
/// </summary>
/// <param name="engine">The rules.</param>
/// <param name="profiles">Makers' limits.</param>
/// <param name="evaluations">What was said before.</param>
/// <param name="tenant">Whose records they are.</param>
/// <param name="receivedAt">When they came.</param>
public sealed class RecordCheck(ComplianceEngine engine, ProfileStore profiles, EvaluationStore evaluations, Tenant tenant, DateTimeOffset receivedAt)
{
    // A clock that is wrong by a time zone is forgiven; a visit of next week is none.
    private static readonly TimeSpan Leeway = TimeSpan.FromDays(1);

    private readonly ConcurrentDictionary<string, Task<ApplianceProfile?>> _profiles = new(StringComparer.Ordinal);

    /// <summary>Whether only what was stored by <c>receivedAt</c> counts, and records that were filed before may come again, as in an audit.</summary>
    public bool IsAsAtReceipt { get; init; }

    /// <summary>Whether the visits must have happened: not of drafts.</summary>
    public bool MustHaveHappened { get; init; } = true;

    /// <summary>How much of what the rules see is kept.</summary>
    public Detail Detail { get; init; } = Detail.Everything;

    /// <summary>Where it was looked, for the sentences of refusals; empty where that goes without saying.</summary>
    public string LookedIn { get; init; } = "";

    /// <summary>What the record shows, or everything for which it is refused.</summary>
    /// <param name="record">A record that could be read.</param>
    /// <param name="before">What was said of the visits to its appliance before.</param>
    /// <param name="cancel">Gives up.</param>
    /// <param name="asOf">Whose law; default the record's own.</param>
    /// <param name="lookedAtOn">From which day deadlines are seen; default <paramref name="asOf"/>.</param>
    public async Task<CheckedRecord> CheckAsync(
        ServiceRecord record, VisitsBefore before, CancellationToken cancel, DateOnly? asOf = null, DateOnly? lookedAtOn = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        var faults = new List<Fault>();
        if (MustHaveHappened && record.FinishedAt.Value > receivedAt + Leeway)
            faults.Add(new Fault("#/finishedAt", FaultCodes.NotYet, "The visit has not finished yet: its end lies more than a day ahead."));

        // Without the maker's limits the record would be judged by looser ones, and nobody would notice.
        var profile = record.Appliance.ProfileId is { } profileId ? await FindProfileAsync(profileId, cancel) : null;
        if (profile is null && record.Appliance.ProfileId is not null)
            faults.Add(new Fault("#/appliance/profileId", FaultCodes.UnknownReference, $"There is no such appliance profile{LookedIn}; save it first, or leave the member out."));

        var superseding = record.Supersedes is { } supersedes ? await FindSupersededAsync(record, supersedes, faults, cancel) : null;
        faults.AddRange(superseding?.Faults() ?? []);
        if (faults.Count > 0)
            return new CheckedRecord(faults);

        var beside = LookedUp.Beside(record, profile, before);
        var evaluation = engine.Evaluate(record, beside, asOf, lookedAtOn, Detail);
        faults.AddRange(superseding?.Faults(evaluation) ?? []);
        return faults.Count > 0
            ? new CheckedRecord(faults)
            : new CheckedRecord(superseding is null ? evaluation : evaluation with { Supersedes = superseding.Replaced(evaluation) }, beside);
    }

    /// <summary>What is said where another record was quicker to replace the same evaluation.</summary>
    public static Fault SupersededInTheMeantime { get; } =
        new("#/supersedes", FaultCodes.UnknownReference, "This evaluation has been superseded by another one already.");

    private Task<ApplianceProfile?> FindProfileAsync(string profileId, CancellationToken cancel) =>
        _profiles.GetOrAdd(profileId, id => profiles.FindAsync(tenant, id, version: null, cancel, IsAsAtReceipt ? receivedAt : null));

    private async Task<Superseding?> FindSupersededAsync(ServiceRecord record, string supersedes, List<Fault> faults, CancellationToken cancel)
    {
        var stored = await evaluations.FindAsync(tenant, supersedes, cancel);
        if (stored is null)
            faults.Add(new Fault("#/supersedes", FaultCodes.UnknownReference, $"There is no such evaluation{LookedIn}."));
        else if (stored.SupersededBy is { } by && IsAsAtReceipt && await IsFiledAsAsync(record, by, cancel))
            return null;
        else if (stored.SupersededBy is { } other && !(IsAsAtReceipt && await IsLaterAsync(other, cancel)))
            faults.Add(SupersededInTheMeantime);
        else if (await ReadRecordAsync(supersedes, cancel) is { } earlier)
            return new Superseding(record, earlier, stored.Evaluation);
        else
            faults.Add(new Fault("#/supersedes", FaultCodes.OtherAppliance, "The record of that evaluation can no longer be read, so that it cannot be told whether it is of the same appliance."));
        return null;
    }

    /// <summary>An audit of a past month holds the corrections that were filed in it: those replace nothing anew.</summary>
    private async Task<bool> IsFiledAsAsync(ServiceRecord record, string evaluationId, CancellationToken cancel) =>
        await ReadRecordAsync(evaluationId, cancel) is { } filed && CanonicalForm.Write(filed).AsSpan().SequenceEqual(CanonicalForm.Write(record));

    private async Task<bool> IsLaterAsync(string evaluationId, CancellationToken cancel) =>
        (await evaluations.FindAsync(tenant, evaluationId, cancel))?.Evaluation.EvaluatedAt > receivedAt;

    private async Task<ServiceRecord?> ReadRecordAsync(string evaluationId, CancellationToken cancel) =>
        await evaluations.FindRecordAsync(tenant, evaluationId, cancel) is { } stored ? RecordReader.Read(stored).Record : null;
}

/// <summary>What a record shows, or why it is refused; never both.</summary>
public sealed class CheckedRecord
{
    internal CheckedRecord(Evaluation evaluation, Lookup beside) => (Evaluation, Beside) = (evaluation, beside);

    internal CheckedRecord(IReadOnlyList<Fault> faults) => Faults = faults;

    /// <summary>The whole evaluation, without id and time.</summary>
    public Evaluation? Evaluation { get; }

    /// <summary>What was looked up beside the record.</summary>
    public Lookup Beside { get; } = Lookup.None;

    /// <summary>Everything for which it is refused.</summary>
    public IReadOnlyList<Fault> Faults { get; } = [];
}
