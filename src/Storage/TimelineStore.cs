using Dapper;
using Findings;

namespace Storage;

/// <summary>What had been said of one appliance by a moment.</summary>
public sealed class TimelineStore(Database database, HistoryStore histories)
{
    private const string OfAppliance = """
        tenant = @tenant AND serial_number = @serialNumber AND (@makerKey IS NULL OR maker_key = @makerKey)
            AND known_at <= @knownAt AND (replaced_at IS NULL OR replaced_at > @knownAt)
        """;

    private const string SelectVisits = $"""
        SELECT evaluation_id AS EvaluationId, record_id AS RecordId, known_at AS KnownAt, facts AS Facts
        FROM visits WHERE {OfAppliance} ORDER BY finished_at DESC, evaluation_id DESC LIMIT @limit
        """;

    private const string CountVisits = $"SELECT COUNT(*) FROM visits WHERE {OfAppliance}";

    private const string OfEvaluations = """
        v.tenant = @tenant AND v.serial_number = @serialNumber AND (@makerKey IS NULL OR v.maker_key = @makerKey) AND v.known_at <= @knownAt
        """;

    private const string SelectEvaluations = $"""
        SELECT v.evaluation_id AS EvaluationId, v.record_id AS RecordId, COALESCE(e.maker, l.maker) AS Maker, v.finished_at AS FinishedAt,
            v.known_at AS EvaluatedAt, COALESCE(e.outcome, l.outcome) AS Outcome, s.evaluation_id AS SupersededBy
        FROM visits v {StoredVisits.Join}
        LEFT JOIN visits s ON s.tenant = v.tenant AND s.evaluation_id = COALESCE(e.superseded_by, l.corrected_by) AND s.known_at <= @knownAt
        WHERE {OfEvaluations} AND (@finishedAt IS NULL OR (v.finished_at, v.evaluation_id) < (@finishedAt, @evaluationId))
        ORDER BY v.finished_at DESC, v.evaluation_id DESC LIMIT @limit
        """;

    private const string CountEvaluations = $"SELECT COUNT(*) FROM visits v WHERE {OfEvaluations}";

    private readonly StoredVisits _stored = new(database);

    /// <summary>The visits, the latest first and at most <paramref name="limit"/>, and how many there are.</summary>
    public async Task<(IReadOnlyList<TimelineVisit> Visits, int Total)> VisitsAsync(
        Tenant tenant, string serialNumber, string? maker, DateTimeOffset knownAt, int limit, CancellationToken cancel)
    {
        var asked = Asked(tenant, serialNumber, maker, knownAt, limit, after: null);
        var rows = (await ReadAsync<VisitRow>(SelectVisits, asked, cancel)).AsList();
        var stored = await _stored.FindAsync(tenant, rows.Select(row => row.EvaluationId), cancel);
        var visits = new List<TimelineVisit>();
        foreach (var row in rows.Where(row => stored.ContainsKey(row.EvaluationId)))
        {
            var evaluation = stored[row.EvaluationId].ReadEvaluation();
            visits.Add(new TimelineVisit
            {
                EvaluationId = row.EvaluationId,
                RecordId = row.RecordId,
                SaidAt = Database.MomentOf(row.KnownAt),
                AsOf = evaluation.AsOf,
                LookedAtOn = evaluation.LookedAtOn,
                RuleSetVersion = evaluation.RuleSet.Version,
                Outcome = evaluation.Outcome,
                Counts = evaluation.Counts,
                Facts = await histories.FactsOfAsync(tenant, row.EvaluationId, row.Facts, cancel),
            });
        }

        return (visits, await CountAsync(CountVisits, asked, cancel));
    }

    /// <summary>Every evaluation, those that others have replaced as well, the latest visit first; those behind <paramref name="after"/>.</summary>
    public async Task<(IReadOnlyList<ApplianceEvaluation> Items, int Total)> EvaluationsAsync(
        Tenant tenant, string serialNumber, string? maker, DateTimeOffset knownAt, EvaluationCursor? after, int limit, CancellationToken cancel)
    {
        var asked = Asked(tenant, serialNumber, maker, knownAt, limit, after);
        var rows = await ReadAsync<EvaluationRow>(SelectEvaluations, asked, cancel);
        var items = rows.Select(row => new ApplianceEvaluation
        {
            EvaluationId = row.EvaluationId,
            RecordId = row.RecordId,
            Maker = row.Maker,
            FinishedAt = Database.MomentOf(row.FinishedAt),
            EvaluatedAt = Database.MomentOf(row.EvaluatedAt),
            Outcome = Enum.Parse<OverallOutcome>(row.Outcome, ignoreCase: true),
            SupersededBy = row.SupersededBy,
        });
        return ([.. items], await CountAsync(CountEvaluations, asked, cancel));
    }

    private static DynamicParameters Asked(Tenant tenant, string serialNumber, string? maker, DateTimeOffset knownAt, int limit, EvaluationCursor? after) => new(new
    {
        tenant = tenant.Name,
        serialNumber,
        makerKey = maker is null ? null : VisitKey.OfName(maker),
        knownAt = Database.TextOf(knownAt),
        limit,
        finishedAt = after is null ? null : Database.TextOf(after.FinishedAt),
        evaluationId = after?.EvaluationId,
    });

    private Task<IEnumerable<T>> ReadAsync<T>(string sql, DynamicParameters asked, CancellationToken cancel) =>
        database.ReadAsync(connection => connection.QueryAsync<T>(new CommandDefinition(sql, asked, cancellationToken: cancel)), cancel);

    private Task<int> CountAsync(string sql, DynamicParameters asked, CancellationToken cancel) =>
        database.ReadAsync(connection => connection.ExecuteScalarAsync<int>(new CommandDefinition(sql, asked, cancellationToken: cancel)), cancel);

    private sealed class VisitRow
    {
        public required string EvaluationId { get; init; }

        public required string RecordId { get; init; }

        public required string KnownAt { get; init; }

        public byte[]? Facts { get; init; }
    }

    private sealed class EvaluationRow
    {
        public required string EvaluationId { get; init; }

        public required string RecordId { get; init; }

        public string? Maker { get; init; }

        public required string FinishedAt { get; init; }

        public required string EvaluatedAt { get; init; }

        public required string Outcome { get; init; }

        public string? SupersededBy { get; init; }
    }
}
