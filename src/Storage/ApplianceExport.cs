using System.Text.Json;
using Dapper;

namespace Storage;

/// <summary>All that is held of one appliance.</summary>
public sealed class ApplianceExport(Database database)
{
    private const string SelectEvaluations = """
        SELECT 'evaluation' AS Source, evaluation_id AS Id, record AS Record, evaluation AS Answer FROM evaluations
        WHERE tenant = @tenant AND serial_number = @serialNumber AND (@maker IS NULL OR maker = @maker) ORDER BY finished_at, evaluation_id
        """;

    private const string SelectLines = """
        SELECT 'audit' AS Source, audit_id AS Id, record AS Record, answer AS Answer FROM audit_lines
        WHERE tenant = @tenant AND serial_number = @serialNumber AND (@maker IS NULL OR maker = @maker) ORDER BY finished_at, audit_id, line
        """;

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
                using var record = JsonDocument.Parse(WithoutMark(row.Source == "audit" ? Packed.Open(row.Record) : row.Record));
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

    private static ReadOnlyMemory<byte> WithoutMark(byte[] record) => record.AsSpan().StartsWith("\uFEFF"u8) ? record.AsMemory(3) : record;

    private sealed class Row
    {
        public required string Source { get; init; }

        public required string Id { get; init; }

        public required byte[] Record { get; init; }

        public required byte[] Answer { get; init; }
    }
}
