using Checking;
using ComplianceApi.Api.Problems;
using ComplianceApi.Operations;
using Findings;
using Records.Reading;
using RuleEngine;
using RuleModel;
using Rules;
using Storage;

namespace ComplianceApi.Api.Evaluations;

/// <summary>Judges a posted record: read, check, keep.</summary>
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
        var now = clock.GetUtcNow();
        var earlier = await histories.FindAsync(tenant, [record], now, cancel);
        var said = await new RecordCheck(engine, profiles, evaluations, tenant, now) { MustHaveHappened = keep }.CheckAsync(record, earlier[0], cancel, law.AsOf);
        if (said.Evaluation is not { } whole)
        {
            Telemetry.Refused();
            return new Judged(FaultKind.Invalid, said.Faults);
        }

        Telemetry.Judged(whole.Outcome);
        var evaluation = whole with
        {
            EvaluationId = keep ? keyed?.EvaluationId ?? Guid.CreateVersion7(now).ToString() : null,
            EvaluatedAt = now,
            NextChange = law.ShowsNextChange ? engine.NextChange(whole, record, said.Beside) : null,
        };
        return !keep || await evaluations.SaveAsync(tenant, record, posted, evaluation, shown, cancel, DueDates.Of(new Visit(record, engine.Catalogue.Limits, said.Beside)), keyed)
            ? new Judged(evaluation)
            : new Judged(FaultKind.Invalid, [RecordCheck.SupersededInTheMeantime]);
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
