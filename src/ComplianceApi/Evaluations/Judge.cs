using Audits;
using Findings;
using RuleEngine;
using RuleModel;
using Rules;
using ServiceRecords;

namespace ComplianceApi;

/// <summary>Judges a posted record: read, look up, judge, keep.</summary>
public sealed class Judge(ComplianceEngine engine, EvaluationStore evaluations, ProfileStore profiles, HistoryStore histories, TimeProvider clock)
{
    /// <summary>The whole evaluation, or every fault of the body.</summary>
    /// <param name="tenant">Whose record it is.</param>
    /// <param name="posted">The body.</param>
    /// <param name="shown">How much of the answer is asked for; kept with it.</param>
    /// <param name="keep">Whether to store it.</param>
    /// <param name="law">Whose law.</param>
    /// <param name="cancel">Gives up.</param>
    /// <param name="keyed">The caller's key and the id that its evaluation is to have; null: no key, and a new id.</param>
    /// <exception cref="KeyLostException">The key was held for too long; nothing is stored.</exception>
    public async Task<Judged> JudgeAsync(Tenant tenant, ReadOnlyMemory<byte> posted, Include shown, bool keep, Law law, CancellationToken cancel, KeyedRequest? keyed = null)
    {
        using var judging = Telemetry.StartJudging();
        var read = RecordReader.Read(posted);
        if (!read.IsRecord)
        {
            Telemetry.Refused();
            return new Judged(read.Kind.Value, read.Faults);
        }

        var record = read.Record;
        var faults = new List<Fault>();
        var profile = await FindProfileAsync(tenant, record.Appliance.ProfileId, faults, cancel);
        await DemandSupersedableAsync(tenant, record.Supersedes, faults, cancel);
        if (faults.Count > 0)
            return new Judged(FaultKind.Invalid, faults);

        var now = clock.GetUtcNow();
        var earlier = await histories.FindAsync(tenant, [record], now, cancel);
        var lookup = LookedUp.Beside(record, profile, earlier[0]);
        var whole = engine.Evaluate(record, lookup, law.AsOf);
        Telemetry.Judged(whole.Outcome);
        var evaluation = whole with
        {
            EvaluationId = keep ? keyed?.EvaluationId ?? Guid.CreateVersion7(now).ToString() : null,
            EvaluatedAt = now,
            NextChange = law.ShowsNextChange ? engine.NextChange(whole, record, lookup) : null,
        };
        return !keep || await evaluations.SaveAsync(tenant, record, posted, evaluation, shown, cancel, DueDates.Of(new Visit(record, engine.Catalogue.Limits, lookup)), keyed)
            ? new Judged(evaluation)
            : new Judged(FaultKind.Invalid, [SupersededInTheMeantime]);
    }

    private static Fault SupersededInTheMeantime { get; } = new("#/supersedes", FaultCodes.UnknownReference, "This evaluation has been superseded by another one already.");

    private async Task<ApplianceProfile?> FindProfileAsync(Tenant tenant, string? profileId, List<Fault> faults, CancellationToken cancel)
    {
        if (profileId is null)
            return null;

        // Without the maker's limits the record would be judged by looser ones, and nobody would notice.
        var profile = await profiles.FindAsync(tenant, profileId, version: null, cancel);
        if (profile is null)
            faults.Add(new Fault("#/appliance/profileId", FaultCodes.UnknownReference, "There is no such appliance profile; save it first, or leave the member out."));
        return profile;
    }

    private async Task DemandSupersedableAsync(Tenant tenant, string? supersedes, List<Fault> faults, CancellationToken cancel)
    {
        if (supersedes is null)
            return;

        var superseded = await evaluations.FindAsync(tenant, supersedes, cancel);
        if (superseded is null)
            faults.Add(new Fault("#/supersedes", FaultCodes.UnknownReference, "There is no such evaluation."));
        else if (superseded.SupersededBy is not null)
            faults.Add(SupersededInTheMeantime);
    }
}

/// <summary>By whose law a record is judged.</summary>
/// <param name="AsOf">The day; null: the record's own.</param>
/// <param name="IsNextChangeAsked">Whether to show the next known change; under a day of the caller's own it always is.</param>
public sealed record Law(DateOnly? AsOf, bool IsNextChangeAsked)
{
    /// <summary>Whether the next known change is to be shown.</summary>
    public bool ShowsNextChange => IsNextChangeAsked || AsOf is not null;
}

/// <summary>An evaluation, or what is wrong with the record; never both.</summary>
public sealed class Judged
{
    internal Judged(Evaluation evaluation) => Evaluation = evaluation;

    internal Judged(FaultKind kind, IReadOnlyList<Fault> faults) => Problem = ProblemResult.Of(kind, faults);

    /// <summary>The whole evaluation.</summary>
    public Evaluation? Evaluation { get; }

    /// <summary>What is wrong.</summary>
    public ProblemResult? Problem { get; }
}
