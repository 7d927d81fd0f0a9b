using Dapper;

namespace Audits;

/// <summary>Finds what is kept of one appliance: evaluations of single records, and answers of audits.</summary>
public sealed class ApplianceShelf(Database database)
{
    private const string Select = """
        SELECT evaluation_id AS EvaluationId, NULL AS AuditId, 0 AS Line, record_id AS RecordId, maker AS Maker, finished_at AS FinishedAt,
            outcome AS Outcome, superseded_by AS SupersededBy
        FROM evaluations WHERE tenant = @tenant AND serial_number = @serialNumber
        UNION ALL
        SELECT NULL, audit_id, line, record_id, maker, finished_at, outcome, NULL
        FROM audit_lines WHERE tenant = @tenant AND serial_number = @serialNumber
        ORDER BY 6 DESC, 4 LIMIT @limit
        """;

    /// <summary>The latest visits, latest first; empty when nothing is kept.</summary>
    public async Task<IReadOnlyList<KeptVisit>> OfAsync(Tenant tenant, string serialNumber, int limit, CancellationToken cancel)
    {
        var command = new CommandDefinition(Select, new { tenant = tenant.Name, serialNumber, limit }, cancellationToken: cancel);
        return (await database.ReadAsync(connection => connection.QueryAsync<KeptVisit>(command), cancel)).AsList();
    }
}

/// <summary>A visit to an appliance of which an answer is kept.</summary>
public sealed class KeptVisit
{
    /// <summary>The evaluation; null of an audit's answer.</summary>
    public string? EvaluationId { get; init; }

    /// <summary>The audit; null of an evaluation.</summary>
    public string? AuditId { get; init; }

    /// <summary>The line in the audit.</summary>
    public long Line { get; init; }

    /// <summary>The caller's id of the record.</summary>
    public required string RecordId { get; init; }

    /// <summary>Maker on the plate.</summary>
    public string? Maker { get; init; }

    /// <summary>When the visit ended.</summary>
    public required string FinishedAt { get; init; }

    /// <summary>What the record showed, by its name in JSON.</summary>
    public required string Outcome { get; init; }

    /// <summary>The evaluation that took the place of this one.</summary>
    public string? SupersededBy { get; init; }

    /// <summary>The day on which the visit ended, in UTC.</summary>
    public DateOnly FinishedOn => DateOnly.FromDateTime(Database.MomentOf(FinishedAt).UtcDateTime);
}
