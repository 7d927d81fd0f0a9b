using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using Findings;
using Records;
using Storage;
using Visits;

namespace Checking;

/// <summary>
/// The road of a record that was taken before, when it is judged again: as it is stored, with what stood beside it then. One for each
/// piece of work, for it remembers the profiles that it found.
/// </summary>
/// <param name="profiles">Makers' limits.</param>
/// <param name="tenant">Whose records they are.</param>
internal sealed class StoredRecordCheck(ProfileStore profiles, Tenant tenant)
{
    private readonly ConcurrentDictionary<(string, int?), Task<ApplianceProfile?>> _profiles = new();

    /// <summary>What the record was judged by, or why it cannot be judged again.</summary>
    /// <param name="visit">What is stored; null: nothing is any longer.</param>
    /// <param name="cancel">Cancels the operation.</param>
    public async Task<StoredRecord> LookUpAsync(StoredVisit? visit, CancellationToken cancel)
    {
        if (visit is null)
            return new StoredRecord("It is no longer stored.");
        if (visit.ReadRecord() is not { } record)
            return new StoredRecord("Its record is no longer readable.");

        var (asOf, lookedAtOn, context) = visit.ReadFrame();
        return await LookupOfAsync(context, cancel) is { } beside
            ? new StoredRecord(record, beside, asOf, lookedAtOn)
            : new StoredRecord("The appliance profile by which it was judged is no longer stored.");
    }

    private async Task<Lookup?> LookupOfAsync(EvaluationContext context, CancellationToken cancel)
    {
        if (context.ProfileId is not { } profileId)
            return Lookup.Of(context);

        var profile = await _profiles.GetOrAdd((profileId, context.ProfileVersion), key => profiles.FindAsync(tenant, key.Item1, key.Item2, cancel));
        return profile is null ? null : Lookup.Of(context, profile.Limits);
    }
}

/// <summary>A stored record with all that it was judged by, or why it cannot be judged again; never both.</summary>
internal sealed class StoredRecord
{
    public StoredRecord(string problem) => Problem = problem;

    public StoredRecord(ServiceRecord record, Lookup beside, DateOnly asOf, DateOnly lookedAtOn) =>
        (Record, Beside, AsOf, LookedAtOn) = (record, beside, asOf, lookedAtOn);

    /// <summary>Why it cannot be judged again.</summary>
    public string? Problem { get; }

    /// <summary>The record.</summary>
    public ServiceRecord? Record { get; }

    /// <summary>What stood beside it.</summary>
    public Lookup Beside { get; } = Lookup.None;

    /// <summary>By whose law it was judged.</summary>
    public DateOnly AsOf { get; }

    /// <summary>From which day deadlines were seen.</summary>
    public DateOnly LookedAtOn { get; }

    /// <summary>Can it be judged again?</summary>
    [MemberNotNullWhen(true, nameof(Record))]
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool IsThere => Record is not null;
}
