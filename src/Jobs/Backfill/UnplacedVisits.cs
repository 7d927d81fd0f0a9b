using Dapper;
using Storage;

namespace Jobs.Backfill;

/// <summary>Reads premises, engineer and start from the records of visits that an older version of the service has stored.</summary>
public sealed class UnplacedVisits(Database database)
{
    private const string Select = "SELECT tenant AS Tenant, evaluation_id AS EvaluationId FROM visits WHERE premises IS NULL ORDER BY tenant, evaluation_id LIMIT 100";

    private const string Place = "UPDATE visits SET premises = @premises, engineer = @engineer, started_at = @startedAt WHERE tenant = @tenant AND evaluation_id = @evaluationId AND premises IS NULL";

    private readonly StoredVisits _stored = new(database);

    /// <summary>Does some; false when there are none.</summary>
    public async Task<bool> RunAsync(CancellationToken cancel)
    {
        var rows = (await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(Select, cancellationToken: cancel)), cancel)).AsList();
        foreach (var ofTenant in rows.GroupBy(row => row.Tenant, StringComparer.Ordinal))
        {
            var stored = await _stored.FindAsync(new Tenant(ofTenant.Key), ofTenant.Select(row => row.EvaluationId), cancel);
            var placed = ofTenant.Select(row =>
            {
                // What the present reader refuses names nobody, as a record does that says nothing.
                var record = stored.GetValueOrDefault(row.EvaluationId)?.ReadRecord();
                return new
                {
                    tenant = ofTenant.Key,
                    evaluationId = row.EvaluationId,
                    premises = record is null ? "" : VisitKey.OfPremises(record),
                    engineer = record is null ? "" : VisitKey.OfEngineer(record),
                    startedAt = record is null ? "" : VisitKey.OfStart(record),
                };
            }).ToList();
            await database.WriteAsync(
                async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(Place, placed, transaction, cancellationToken: cancel)) > 0, cancel);
        }

        return rows.Count > 0;
    }

    private sealed class Row
    {
        public required string Tenant { get; init; }

        public required string EvaluationId { get; init; }
    }
}
