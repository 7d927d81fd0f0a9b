using Findings;
using Kernel;
using Records.Faults;
using Records.Reading;
using Storage;
using Visits.Judging;

namespace Checking;

/// <summary>The road of a record that is posted on its own: read, look up, refuse or judge, date, keep.</summary>
public sealed class RecordIntake(
    ComplianceEngine engine, EvaluationStore evaluations, ProfileStore profiles, HistoryStore histories, TimeProvider clock)
{
    /// <summary>The whole evaluation, or every fault of the body.</summary>
    /// <param name="tenant">Whose record it is.</param>
    /// <param name="posted">The body.</param>
    /// <param name="shown">How much of the answer is asked for; kept with it.</param>
    /// <param name="keep">Whether to store it.</param>
    /// <param name="law">Whose law.</param>
    /// <param name="cancel">Cancels the operation.</param>
    /// <param name="keyed">The caller's key and the id that its evaluation is to have; null: no key, and a new id.</param>
    /// <param name="keyId">Id of the key with which it was posted; null: none was asked for.</param>
    /// <exception cref="KeyLostException">The key was held for too long; nothing is stored.</exception>
    public async Task<TakenRecord> TakeAsync(
        Tenant tenant, ReadOnlyMemory<byte> posted, Include shown, bool keep, Law law, CancellationToken cancel, KeyedRequest? keyed = null,
        string? keyId = null)
    {
        var read = RecordReader.Read(posted, engine.Catalogue.JurisdictionCodes);
        if (!read.IsRecord)
            return new TakenRecord(read.Kind.Value, read.Faults);

        var record = read.Record;
        var now = clock.GetUtcNow();
        var before = await histories.FindAsync(tenant, [record], now, cancel);
        var said = await new RecordCheck(engine, profiles, evaluations, tenant, now) { MustHaveHappened = keep, Detail = keep || shown == Include.All ? Detail.Everything : Detail.Problems }.CheckAsync(record, before[0], cancel, law.AsOf);
        if (said.Evaluation is not { } whole)
            return new TakenRecord(FaultKind.Invalid, said.Faults);

        var evaluation = whole with
        {
            EvaluationId = keep ? keyed?.EvaluationId ?? Guid.CreateVersion7(now).ToString() : null,
            EvaluatedAt = now,
            NextChange = law.ShowsNextChange ? engine.NextChange(whole, record, said.Beside) : null,
        };
        return !keep || await evaluations.SaveAsync(tenant, record, posted, evaluation, shown, cancel, engine.Law.DueDatesOf(engine.VisitOf(record, said.Beside), evaluation), keyed, keyId)
            ? new TakenRecord(evaluation)
            : new TakenRecord(FaultKind.Invalid, [RecordCheck.SupersededInTheMeantime]);
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
public sealed class TakenRecord
{
    internal TakenRecord(Evaluation evaluation) => Evaluation = evaluation;

    internal TakenRecord(FaultKind kind, IReadOnlyList<Fault> faults) => (Kind, Faults) = (kind, faults);

    /// <summary>The whole evaluation.</summary>
    public Evaluation? Evaluation { get; }

    /// <summary>What kind of faults it has.</summary>
    public FaultKind Kind { get; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<Fault> Faults { get; } = [];
}
