using System.Text.Json;
using Dapper;

namespace Audits;

/// <summary>
/// What must be kept, what may go, and all that is held of one appliance. GSIUR 1998, regulation 36(3)(c): a landlord keeps the record
/// of a check until two further checks of the appliance have been made, or, of an appliance taken out, for two years after its last check.
/// </summary>
public sealed class Retention(Database database)
{
    /// <summary>Fewest years that anything is kept.</summary>
    public const int FewestYears = 2;

    private const string Expired = """
        tenant = @tenant AND finished_at < @before AND (landlord = 0 OR (
            SELECT COUNT(*) FROM {0} n
            WHERE n.tenant = {0}.tenant AND n.serial_number = {0}.serial_number AND COALESCE(n.maker, '') = COALESCE({0}.maker, '')
                AND n.finished_at > {0}.finished_at) >= 2)
        """;

    private const string SelectEvaluations = """
        SELECT 'evaluation' AS Source, evaluation_id AS Id, record AS Record, evaluation AS Answer FROM evaluations
        WHERE tenant = @tenant AND serial_number = @serialNumber AND (@maker IS NULL OR maker = @maker) ORDER BY finished_at, evaluation_id
        """;

    private const string SelectLines = """
        SELECT 'audit' AS Source, audit_id AS Id, record AS Record, answer AS Answer FROM audit_lines
        WHERE tenant = @tenant AND serial_number = @serialNumber AND (@maker IS NULL OR maker = @maker) ORDER BY finished_at, audit_id, line
        """;

    /// <summary>
    /// Removes records older than <paramref name="before"/>, which must lie two years back; of landlords' records only those with two
    /// later ones of the same appliance. Where it is not known whose a record is, it counts as a landlord's. Gives how many of each kind went.
    /// </summary>
    public async Task<(int Evaluations, int AuditLines)> PurgeAsync(Tenant tenant, DateTimeOffset before, CancellationToken cancel)
    {
        var asked = new { tenant = tenant.Name, before = Database.TextOf(before) };
        var (evaluations, lines) = (0, 0);
        await database.WriteAsync(
            async transaction =>
            {
                Task<int> Execute(string sql) => transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, asked, transaction, commandTimeout: 0, cancellationToken: cancel));
                await Execute($"DELETE FROM due_dates WHERE (tenant, evaluation_id) IN (SELECT tenant, evaluation_id FROM evaluations WHERE {Of("evaluations")})");
                await Execute($"DELETE FROM visits WHERE (tenant, evaluation_id) IN (SELECT tenant, evaluation_id FROM evaluations WHERE {Of("evaluations")})");
                evaluations = await Execute($"DELETE FROM evaluations WHERE {Of("evaluations")}");
                await Execute($"""
                    DELETE FROM audit_findings WHERE (tenant, audit_id, line) IN (SELECT tenant, audit_id, line FROM audit_lines WHERE {Of("audit_lines")})
                    """);
                lines = await Execute($"DELETE FROM audit_lines WHERE {Of("audit_lines")}");
                return true;
            },
            cancel);
        return (evaluations, lines);
    }

    /// <summary>Writes all that is held of one appliance, oldest first, a line of JSON each; gives how many there were.</summary>
    public async Task<int> ExportAsync(Tenant tenant, string serialNumber, string? maker, Stream output, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(output);
        var asked = new { tenant = tenant.Name, serialNumber, maker };
        var count = 0;
        foreach (var sql in new[] { SelectEvaluations, SelectLines })
        {
            foreach (var row in await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(sql, asked, cancellationToken: cancel)), cancel))
            {
                using var record = JsonDocument.Parse(row.Source == "audit" ? Packed.Open(row.Record) : WithoutMark(row.Record));
                using var answer = JsonDocument.Parse(Packed.Open(row.Answer));
                using (var writer = new Utf8JsonWriter(output))
                {
                    writer.WriteStartObject();
                    writer.WriteString("source", row.Source);
                    writer.WriteString("id", row.Id);
                    writer.WritePropertyName("record");
                    record.WriteTo(writer);
                    writer.WritePropertyName("answer");
                    answer.WriteTo(writer);
                    writer.WriteEndObject();
                }

                output.WriteByte((byte)'\n');
                count++;
            }
        }

        return count;
    }

    private static string Of(string table) => Expired.Replace("{0}", table, StringComparison.Ordinal);

    private static ReadOnlyMemory<byte> WithoutMark(byte[] record) => record.AsSpan().StartsWith("\uFEFF"u8) ? record.AsMemory(3) : record;

    private sealed class Row
    {
        public required string Source { get; init; }

        public required string Id { get; init; }

        public required byte[] Record { get; init; }

        public required byte[] Answer { get; init; }
    }
}
