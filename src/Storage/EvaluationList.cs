using Dapper;
using Findings;
using Records;
using Wire;

namespace Storage;

/// <summary>Lists what was said of records, whether they were posted one by one or came in an audit.</summary>
public sealed class EvaluationList(Database database, Journal journal)
{
    private const string Columns = """
        v.changed AS Change, v.evaluation_id AS EvaluationId, v.record_id AS RecordId, v.job_type AS JobType, COALESCE(e.maker, l.maker) AS Maker,
            v.serial_number AS SerialNumber, v.premises AS Premises, v.engineer AS Engineer, v.finished_at AS FinishedAt, v.known_at AS EvaluatedAt,
            v.outcome AS Outcome, v.closing AS Closing, v.closes_as AS ClosesAs, v.replaced_at AS ReplacedAt, v.replaced_by AS ReplacedBy
        """;

    // The index by day is of this: one of the moment itself would be taken where a better one is there.
    private const string Day = "SUBSTR(v.finished_at, 1, 10)";

    private const string IsUnlisted = "SELECT COUNT(*) FROM (SELECT 1 FROM visits WHERE tenant = @tenant AND outcome IS NULL LIMIT 1) unlisted";

    /// <summary>Is there still something stored by an older version of which the list knows too little?</summary>
    public async Task<bool> IsIncompleteAsync(Tenant tenant, CancellationToken cancel) =>
        await database.ReadAsync(connection => connection.ExecuteScalarAsync<int>(new CommandDefinition(IsUnlisted, new { tenant = tenant.Name }, cancellationToken: cancel)), cancel) > 0;

    /// <summary>What changed last first, of what changed before the number <paramref name="before"/>; at most <paramref name="limit"/>.</summary>
    public Task<IReadOnlyList<ListedEvaluation>> LatestAsync(Tenant tenant, EvaluationQuery query, long? before, int limit, CancellationToken cancel)
    {
        var (conditions, asked) = Asked(tenant, query);
        if (before is { } number)
            Ask(conditions, asked, "v.changed < @before", "before", number);
        return ReadAsync(conditions, $"{OrderOf(query)} DESC", asked, limit, cancel);
    }

    /// <summary>
    /// What changed after the number <paramref name="since"/>, in the order of its last change, at most <paramref name="limit"/>; and the number
    /// from which to go on, up to which none is missing. What one reader sees twice has changed in between. Null where no change has that number yet.
    /// </summary>
    public async Task<(IReadOnlyList<ListedEvaluation> Items, long UpTo)?> ChangedAsync(Tenant tenant, EvaluationQuery query, long since, int limit, CancellationToken cancel)
    {
        // First: whatever is numbered by now is seen below.
        var last = await journal.LastAsync(tenant, cancel);
        if (since > last)
            return null;

        var (conditions, asked) = Asked(tenant, query);
        Ask(conditions, asked, "v.changed > @since", "since", since);
        var items = await ReadAsync(conditions, OrderOf(query), asked, limit, cancel);
        return (items, items is not [.., var latest] ? last : items.Count == limit ? latest.Change : Math.Max(last, latest.Change));
    }

    /// <summary>How many there are.</summary>
    public async Task<int> CountAsync(Tenant tenant, EvaluationQuery query, CancellationToken cancel)
    {
        var (conditions, asked) = Asked(tenant, query);
        var sql = $"SELECT COUNT(*) FROM visits v WHERE {string.Join(" AND ", conditions)}";
        return await database.ReadAsync(connection => connection.ExecuteScalarAsync<int>(new CommandDefinition(sql, asked, cancellationToken: cancel)), cancel);
    }

    /// <summary>The SQL of a list, for a look at how it is searched.</summary>
    internal static (string Sql, DynamicParameters Values) CommandOf(Tenant tenant, EvaluationQuery query, int limit)
    {
        var (conditions, asked) = Asked(tenant, query);
        return (SqlOf(conditions, $"{OrderOf(query)} DESC", asked, limit), asked);
    }

    /// <summary>Of one record, appliance or home there are few: they are found first and then sorted, where the index of the order would lead through all there are.</summary>
    private static string OrderOf(EvaluationQuery query) => query is { RecordId: null, SerialNumber: null, Premises: null } ? "v.changed" : "v.changed + 0";

    private async Task<IReadOnlyList<ListedEvaluation>> ReadAsync(List<string> conditions, string order, DynamicParameters asked, int limit, CancellationToken cancel)
    {
        var command = new CommandDefinition(SqlOf(conditions, order, asked, limit), asked, cancellationToken: cancel);
        return [.. (await database.ReadAsync(connection => connection.QueryAsync<Row>(command), cancel)).Select(row => row.ToItem())];
    }

    private static string SqlOf(List<string> conditions, string order, DynamicParameters asked, int limit)
    {
        asked.Add("limit", limit);
        return $"SELECT {Columns} FROM visits v {StoredVisits.Join} WHERE {string.Join(" AND ", conditions)} ORDER BY {order} LIMIT @limit";
    }

    /// <summary>Only what is asked for stands in the SQL, so that the index of it is found. An entry that is still to be made comes with a number of its own.</summary>
    private static (List<string> Conditions, DynamicParameters Asked) Asked(Tenant tenant, EvaluationQuery query)
    {
        var asked = new DynamicParameters(new { tenant = tenant.Name });
        List<string> conditions = ["v.tenant = @tenant", "COALESCE(v.changed, 0) > 0", "v.outcome <> ''"];
        If(query.RecordId, "v.record_id = @recordId", "recordId");
        If(query.SerialNumber, "v.serial_number = @serialNumber", "serialNumber");
        If(KeyOf(query.Maker), "v.maker_key = @maker", "maker");
        If(KeyOf(query.Premises), "v.premises_key = @premises", "premises");
        If(KeyOf(query.Engineer), "v.engineer_key = @engineer", "engineer");
        If(query.Outcome is { } outcome ? WireNames.Of(outcome) : null, "v.outcome = @outcome", "outcome");
        If(query.Closing is { } closing ? WireNames.Of(closing) : null, "v.closing = @closing", "closing");
        If(query.From is { } from ? Database.TextOf(from) : null, $"{Day} >= @from", "from");
        If(query.To is { } to ? Database.TextOf(to) : null, $"{Day} <= @to", "to");
        if (query.Superseded is { } superseded)
            conditions.Add(superseded ? "v.replaced_at IS NOT NULL" : "v.replaced_at IS NULL");
        return (conditions, asked);

        void If(string? value, string condition, string name)
        {
            if (value is not null)
                Ask(conditions, asked, condition, name, value);
        }
    }

    private static string? KeyOf(string? name) => name is null ? null : VisitKey.OfName(name);

    private static void Ask(List<string> conditions, DynamicParameters asked, string condition, string name, object value)
    {
        conditions.Add(condition);
        asked.Add(name, value);
    }

    private sealed class Row
    {
        public required long Change { get; init; }

        public required string EvaluationId { get; init; }

        public required string RecordId { get; init; }

        public JobType? JobType { get; init; }

        public string? Maker { get; init; }

        public required string SerialNumber { get; init; }

        public required string Premises { get; init; }

        public required string Engineer { get; init; }

        public required string FinishedAt { get; init; }

        public required string EvaluatedAt { get; init; }

        public required OverallOutcome Outcome { get; init; }

        public required ListedClosing Closing { get; init; }

        public string? ClosesAs { get; init; }

        public string? ReplacedAt { get; init; }

        public string? ReplacedBy { get; init; }

        public ListedEvaluation ToItem() => new()
        {
            Change = Change,
            EvaluationId = EvaluationId,
            RecordId = RecordId,
            JobType = JobType,
            Maker = Maker,
            SerialNumber = OrNull(SerialNumber),
            Premises = OrNull(Premises),
            Engineer = OrNull(Engineer),
            FinishedAt = Database.MomentOf(FinishedAt),
            EvaluatedAt = Database.MomentOf(EvaluatedAt),
            Outcome = Outcome,
            Closing = Closing,
            ClosesAs = ClosesAs,
            Superseded = ReplacedAt is not null,
            SupersededBy = ReplacedBy,
        };

        private static string? OrNull(string text) => text.Length == 0 ? null : text;
    }
}
