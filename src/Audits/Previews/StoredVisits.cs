using System.Text.Json;
using Dapper;
using Findings;
using ServiceRecords;

namespace Audits;

/// <summary>Stored records with what they were judged by, many at a time.</summary>
internal sealed class StoredVisits(Database database)
{
    private const string Select = """
        SELECT evaluation_id AS EvaluationId, record AS Record, evaluation AS Evaluation FROM evaluations
        WHERE tenant = @tenant AND evaluation_id BETWEEN @first AND @last
        """;

    /// <summary>Those of <paramref name="ids"/>, which are sorted, that are stored.</summary>
    public async Task<Dictionary<string, StoredVisit>> FindAsync(Tenant tenant, IReadOnlyList<string> ids, CancellationToken cancel)
    {
        var wanted = ids.ToHashSet(StringComparer.Ordinal);
        var asked = new { tenant = tenant.Name, first = ids[0], last = ids[^1] };
        var rows = await database.ReadAsync(connection => connection.QueryAsync<StoredVisit>(new CommandDefinition(Select, asked, cancellationToken: cancel)), cancel);
        return rows.Where(row => wanted.Contains(row.EvaluationId)).ToDictionary(row => row.EvaluationId, StringComparer.Ordinal);
    }
}

/// <summary>A stored record with its evaluation, as bytes.</summary>
internal sealed class StoredVisit
{
    public required string EvaluationId { get; init; }

    public required byte[] Record { get; init; }

    public required byte[] Evaluation { get; init; }

    /// <summary>The record; null where the present reader refuses it.</summary>
    public ServiceRecord? ReadRecord() => RecordReader.Read(Record).Record;

    /// <summary>By whose law, from which day, and with what beside it the record was judged. The findings are passed over: reading them would cost more than making them.</summary>
    public (DateOnly AsOf, DateOnly LookedAtOn, EvaluationContext Context) ReadFrame()
    {
        DateOnly? asOf = null, lookedAtOn = null;
        var reader = new Utf8JsonReader(Packed.Open(Evaluation));
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            if (reader.ValueTextEquals("asOf"u8) && reader.Read())
                asOf = Database.DayOf(reader.GetString()!);
            else if (reader.ValueTextEquals("lookedAtOn"u8) && reader.Read())
                lookedAtOn = Database.DayOf(reader.GetString()!);
            else if (reader.ValueTextEquals("context"u8) && reader.Read())
                return (asOf!.Value, lookedAtOn!.Value, JsonSerializer.Deserialize(ref reader, PreviewJson.Wire.EvaluationContext)!);
            else
                reader.Skip();
        }

        throw new InvalidDataException($"The evaluation {EvaluationId} does not say what it was judged by.");
    }
}
