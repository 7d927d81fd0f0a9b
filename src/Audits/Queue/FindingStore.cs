using System.Runtime.CompilerServices;
using Dapper;

namespace Audits;

/// <summary>The findings of an audit, by rows.</summary>
public sealed class FindingStore(Database database)
{
    private const int PageOfAll = 500;

    private const string OfItsLine = """
        FROM audit_lines l WHERE l.tenant = audit_findings.tenant AND l.audit_id = audit_findings.audit_id AND l.line = audit_findings.line
        """;

    /// <summary>The rows behind <paramref name="after"/>, at most <paramref name="limit"/> of them.</summary>
    public async Task<IReadOnlyList<FindingRow>> PageAsync(
        Tenant tenant, string auditId, FindingQuery query, FindingCursor? after, int limit, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(query);
        var key = KeyOf(query.Sort);
        var sql = $"""
            SELECT line AS Line, ordinal AS Ordinal, record_id AS RecordId, maker AS Maker, model AS Model, serial_number AS SerialNumber, engineer AS Engineer,
                rule_id AS RuleId, topic AS Topic, grade AS Grade, outcome AS Outcome, subject AS Subject, message AS Message,
                (SELECT l.outcome {OfItsLine}) AS RecordOutcome, (SELECT l.superseded_by {OfItsLine}) AS SupersededBy
            FROM audit_findings
            WHERE {Matching(query)} {(after is null ? "" : $"AND ({key}line, ordinal) > ({(key.Length > 0 ? "@Key, " : "")}@Line, @Ordinal)")}
            ORDER BY {key}line, ordinal LIMIT @limit
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
