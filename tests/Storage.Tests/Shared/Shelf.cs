using Findings;
using Records;
using Records.Values;

namespace Storage.Tests.Shared;

/// <summary>A store of evaluations and what it gives of them.</summary>
internal sealed class Shelf(Database database)
{
    /// <summary>When it is asked, and when all was said that is not dated otherwise.</summary>
    public static readonly DateTimeOffset Now = new(2026, 9, 14, 12, 0, 0, TimeSpan.Zero);

    private readonly EvaluationStore _evaluations = new(database, Scratch.Rules.Law);
    private readonly HistoryStore _histories = new(database, Scratch.Rules.Law);

    public async Task<string> Save(
        string recordId, string finishedAt, string? supersedes = null, DateTimeOffset? saidAt = null, string? maker = "Quillback", Tenant? tenant = null, DateTimeOffset? withLooseFlueSince = null,
        string serial = "QB-1", string? premises = null, string? engineer = null)
    {
        var record = Record(recordId, finishedAt, supersedes, maker, serial, withLooseFlueSince: withLooseFlueSince, premises: premises, engineer: engineer);
        var evaluation = Scratch.Rules.Evaluate(record) with { EvaluationId = Guid.CreateVersion7().ToString(), EvaluatedAt = saidAt ?? Now };
        Assert.True(await _evaluations.SaveAsync(tenant ?? Scratch.A, record, Scratch.Posted, evaluation, Include.Passes, default));
        return evaluation.EvaluationId;
    }

    public Task<IReadOnlyList<VisitsBefore>> Find(IReadOnlyList<ServiceRecord> records, DateTimeOffset? knownAt = null) =>
        _histories.FindAsync(Scratch.A, records, knownAt ?? Now, default);

    public async Task<IEnumerable<string?>> EarlierThan(ServiceRecord record, DateTimeOffset? knownAt = null) =>
        (await Find([record], knownAt))[0].Earlier.Select(visit => visit.EvaluationId);

    public static ServiceRecord Record(
        string recordId, string finishedAt, string? supersedes = null, string? maker = "Quillback", string serial = "QB-1", PreviousVisit? previous = null,
        DateTimeOffset? withLooseFlueSince = null, string? premises = null, string? engineer = null, string? startedAt = null) => new()
        {
            RecordId = recordId,
            Supersedes = supersedes,
            JobType = JobType.AnnualService,
            Jurisdiction = "GB-ENG",
            StartedAt = withLooseFlueSince is { } since ? Timestamp.Parse(since.ToString("O")) : startedAt is null ? null : Timestamp.Parse(startedAt),
            Premises = premises is null ? null : new Premises { Reference = premises },
            Engineer = engineer is null ? null : new Engineer { LicenceNumber = engineer },
            FinishedAt = Timestamp.Parse(finishedAt),
            Appliance = new Appliance { Fuel = Fuel.NaturalGas, Maker = maker, SerialNumber = serial },
            Flue = withLooseFlueSince is null ? null : new Flue { SupportsOk = false },
            PreviousVisit = previous,
        };
}
