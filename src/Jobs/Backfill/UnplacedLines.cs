using Dapper;
using Jobs.Queue;
using Records.Reading;
using Storage;

namespace Jobs.Backfill;

/// <summary>Reads the premises and the day of the visit from audited records that an older version of the service has stored.</summary>
public sealed class UnplacedLines(Database database)
{
    private const string Select = """
        SELECT tenant AS Tenant, audit_id AS AuditId, line AS Line, record AS Record
        FROM audit_lines WHERE visited_on IS NULL ORDER BY tenant, audit_id, line LIMIT 100
        """;

    private const string Place = "UPDATE audit_lines SET premises = @premises, visited_on = @visitedOn WHERE tenant = @Tenant AND audit_id = @AuditId AND line = @Line";

    /// <summary>Does some; false when there are none.</summary>
    public async Task<bool> RunAsync(CancellationToken cancel)
    {
        var rows = (await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(Select, cancellationToken: cancel)), cancel)).AsList();
        if (rows.Count == 0)
            return false;

        var placed = rows.ConvertAll(row =>
        {
            var (premises, visitedOn) = ResultStore.PlaceOf(RecordReader.Read(Packed.Open(row.Record)).Record);
            return new { row.Tenant, row.AuditId, row.Line, premises, visitedOn };
        });
        return await database.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(Place, placed, transaction, cancellationToken: cancel)) > 0, cancel);
    }

    private sealed class Row
    {
        public required string Tenant { get; init; }

        public required string AuditId { get; init; }

        public required long Line { get; init; }

        public required byte[] Record { get; init; }
    }
}
