using System.Runtime.CompilerServices;
using Dapper;
using Storage;

namespace Jobs.Queue;

/// <summary>The findings of an audit, by rows.</summary>
public sealed class FindingStore(Database database)
{
    private const int PageOfAll = 500;

    /// <summary>The rows behind <paramref name="after"/>, at most <paramref name="limit"/> of them.</summary>
    public async Task<IReadOnlyList<FindingRow>> PageAsync(
        Tenant tenant, string auditId, FindingQuery query, FindingCursor? after, int limit, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(query);
        var key = KeyOf(query.Sort);
        var sql = $"""
            SELECT f.line AS Line, f.ordinal AS Ordinal, f.record_id AS RecordId, COALESCE(l.premises, '') AS Premises, COALESCE(l.visited_on, '') AS StoredDay,
                f.maker AS Maker, f.model AS Model, f.serial_number AS SerialNumber, f.engineer AS Engineer,
                f.rule_id AS RuleId, f.topic AS Topic, f.grade AS Grade, f.outcome AS Outcome, f.subject AS Subject, f.message AS StoredMessage,
                l.outcome AS RecordOutcome, l.superseded_by AS SupersededBy
            FROM (
                SELECT * FROM audit_findings
                WHERE {Matching(query)} {(after is null ? "" : $"AND ({key}line, ordinal) > ({(key.Length > 0 ? "@Key, " : "")}@Line, @Ordinal)")}
                ORDER BY {key}line, ordinal LIMIT @limit) f
            LEFT JOIN audit_lines l ON l.tenant = f.tenant AND l.audit_id = f.audit_id AND l.line = f.line
            ORDER BY {(key.Length > 0 ? "f." : "")}{key}f.line, f.ordinal
            """;
        var asked = Asked(tenant, auditId, query);
        asked.Add("limit", limit);
        asked.Add("Key", after?.Key);
        asked.Add("Line", after?.Line);
        asked.Add("Ordinal", after?.Ordinal);
        return (await database.ReadAsync(connection => connection.QueryAsync<FindingRow>(new CommandDefinition(sql, asked, cancellationToken: cancel)), cancel)).AsList();
    }

    /// <summary>How many rows there are.</summary>
    public Task<int> CountAsync(Tenant tenant, string auditId, FindingQuery query, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(query);
        var command = new CommandDefinition($"SELECT COUNT(*) FROM audit_findings WHERE {Matching(query)}", Asked(tenant, auditId, query), cancellationToken: cancel);
        return database.ReadAsync(connection => connection.ExecuteScalarAsync<int>(command), cancel);
    }

    /// <summary>Every row, a page at a time.</summary>
    public async IAsyncEnumerable<FindingRow> AllAsync(
        Tenant tenant, string auditId, FindingQuery query, [EnumeratorCancellation] CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(query);
        FindingCursor? after = null;
        while (true)
        {
            var page = await PageAsync(tenant, auditId, query, after, PageOfAll, cancel);
            foreach (var row in page)
                yield return row;
            if (page.Count < PageOfAll)
                yield break;
            after = FindingCursor.Of(page[^1], query.Sort);
        }
    }

    // Only what is asked for: a condition that is always true would keep the database from its indexes.
    private static string Matching(FindingQuery query) => string.Join(" AND ", new[]
    {
        "tenant = @tenant AND audit_id = @auditId",
        query.Outcome is null ? null : "outcome = @Outcome",
        query.Topic is null ? null : "topic = @Topic",
        query.RuleId is null ? null : "rule_id = @RuleId",
        query.Engineer is null ? null : "engineer = @Engineer",
        query.RecordOutcome is null ? null : "line IN (SELECT line FROM audit_lines WHERE tenant = @tenant AND audit_id = @auditId AND outcome = @RecordOutcome)",
    }.OfType<string>());

    private static DynamicParameters Asked(Tenant tenant, string auditId, FindingQuery query)
    {
        var asked = new DynamicParameters(query);
        asked.Add("tenant", tenant.Name);
        asked.Add("auditId", auditId);
        return asked;
    }

    private static string KeyOf(FindingSort sort) => sort switch
    {
        FindingSort.Outcome => "grade, ",
        FindingSort.Rule => "rule_id, ",
        FindingSort.Engineer => "engineer, ",
        _ => "",
    };
}
