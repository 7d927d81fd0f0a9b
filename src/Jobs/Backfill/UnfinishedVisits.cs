using Checking;
using Dapper;
using Jobs.Queue;
using Storage;

namespace Jobs.Backfill;

/// <summary>Makes the facts and due dates of visits that an older version of the service has stored.</summary>
public sealed class UnfinishedVisits(Database database, ProfileStore profiles, AuditVisits visits)
{
    private const string Select = """
        SELECT tenant AS Tenant, evaluation_id AS EvaluationId FROM visits WHERE is_whole = 0 ORDER BY tenant, evaluation_id LIMIT 100
        """;

    private const string Finish = """
        UPDATE visits SET facts = COALESCE(@facts, facts), is_whole = 1 WHERE tenant = @tenant AND evaluation_id = @evaluationId AND is_whole = 0
        """;

    private const string IsCurrent = "SELECT COUNT(*) FROM visits WHERE tenant = @tenant AND evaluation_id = @evaluationId AND replaced_at IS NULL";

    private readonly StoredVisits _stored = new(database);

    /// <summary>Does some; false when there are none.</summary>
    public async Task<bool> RunAsync(CancellationToken cancel)
    {
        var rows = (await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(Select, cancellationToken: cancel)), cancel)).AsList();
        foreach (var ofTenant in rows.GroupBy(row => row.Tenant, StringComparer.Ordinal))
        {
            var tenant = new Tenant(ofTenant.Key);
            var stored = await _stored.FindAsync(tenant, ofTenant.Select(row => row.EvaluationId), cancel);
            var check = new StoredRecordCheck(profiles, tenant);
            foreach (var row in ofTenant)
                await FinishAsync(tenant, row.EvaluationId, stored.GetValueOrDefault(row.EvaluationId), check, cancel);
        }

        return rows.Count > 0;
    }

    private async Task FinishAsync(Tenant tenant, string evaluationId, StoredVisit? visit, StoredRecordCheck check, CancellationToken cancel)
    {
        // What the present reader refuses, or was judged by a profile that is gone, gives no dates: none are guessed.
        var facts = visit?.ReadRecord() is { } record ? VisitRows.FactsOf(record, visit.ReadEvaluation(), visits.Law) : null;
        var was = await check.LookUpAsync(visit, cancel);
        var due = was.IsThere ? VisitRows.DueRows(tenant.Name, evaluationId, was.Record.FinishedAt.Value, visits.DueOf(was.Record, was.Beside)).ToList() : [];
        var asked = new { tenant = tenant.Name, evaluationId, facts };
        await database.WriteAsync(
            async transaction =>
            {
                if (await transaction.Connection!.ExecuteAsync(new CommandDefinition(Finish, asked, transaction, cancellationToken: cancel)) != 1)
                    return false;
                if (await transaction.Connection!.ExecuteScalarAsync<int>(new CommandDefinition(IsCurrent, asked, transaction, cancellationToken: cancel)) == 1)
                {
                    await transaction.Connection!.ExecuteAsync(new CommandDefinition(VisitRows.DropDue, asked, transaction, cancellationToken: cancel));
                    await VisitRows.InsertDueAsync(transaction, due, cancel);
                }

                return true;
            },
            cancel);
    }

    private sealed class Row
    {
        public required string Tenant { get; init; }

        public required string EvaluationId { get; init; }
    }
}
