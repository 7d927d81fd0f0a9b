using Dapper;
using Storage;

namespace Jobs.Backfill;

/// <summary>Reads by what visits are listed and known again from what an older version of the service has stored.</summary>
public sealed class UnlistedVisits(Database database)
{
    private const string Select = """
        SELECT tenant AS Tenant, evaluation_id AS EvaluationId FROM visits WHERE outcome IS NULL ORDER BY tenant, evaluation_id LIMIT 100
        """;

    private const string List = """
        UPDATE visits SET outcome = @Outcome, closing = @Closing, closes_as = @ClosesAs, job_type = @JobType,
            engineer = @Engineer, engineer_key = @EngineerKey, premises = @Premises, premises_key = @PremisesKey, started_at = @StartedAt
        WHERE tenant = @tenant AND evaluation_id = @evaluationId
        """;

    private readonly StoredVisits _stored = new(database);

    /// <summary>Does some; false when there are none.</summary>
    public async Task<bool> RunAsync(CancellationToken cancel)
    {
        var rows = (await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(Select, cancellationToken: cancel)), cancel)).AsList();
        foreach (var ofTenant in rows.GroupBy(row => row.Tenant, StringComparer.Ordinal))
        {
            var stored = await _stored.FindAsync(new Tenant(ofTenant.Key), ofTenant.Select(row => row.EvaluationId), cancel);
            var listed = ofTenant.Select(row =>
            {
                var columns = new DynamicParameters(ColumnsOf(stored.GetValueOrDefault(row.EvaluationId)));
                columns.AddDynamicParams(new { tenant = row.Tenant, evaluationId = row.EvaluationId });
                return columns;
            }).ToList();
            await database.WriteAsync(
                async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(List, listed, transaction, cancellationToken: cancel)) > 0, cancel);
        }

        return rows.Count > 0;
    }

    // Of what is no longer there the list shows nothing.
    private static ListColumns ColumnsOf(StoredVisit? visit) => visit is null ? ListColumns.None : ListColumns.Of(visit.ReadRecord(), visit.ReadEvaluation());

    private sealed class Row
    {
        public required string Tenant { get; init; }

        public required string EvaluationId { get; init; }
    }
}
