using System.Text;
using System.Text.Json;
using Dapper;
using Findings;
using Records;
using Records.Reading;

namespace Storage;

/// <summary>Stored records with what was said of them, many at a time, whether they were posted one by one or came in an audit.</summary>
internal sealed class StoredVisits(Database database)
{
    /// <summary>Joins row v of visits with where its record and its answer stand.</summary>
    public const string Join = """
        LEFT JOIN evaluations e ON v.audit_id IS NULL AND e.tenant = v.tenant AND e.evaluation_id = v.evaluation_id
        LEFT JOIN audit_lines l ON l.tenant = v.tenant AND l.audit_id = v.audit_id AND l.line = v.line
        """;

    private const string Select = $$"""
        SELECT v.evaluation_id AS EvaluationId, e.record AS Record, e.evaluation AS Evaluation, l.record AS PackedRecord, l.answer AS Answer
        FROM visits v {{Join}}
        WHERE v.tenant = @tenant AND v.evaluation_id IN ({0})
        """;

    /// <summary>Those of <paramref name="ids"/> that are stored.</summary>
    public async Task<Dictionary<string, StoredVisit>> FindAsync(Tenant tenant, IEnumerable<string> ids, CancellationToken cancel)
    {
        var asked = new DynamicParameters(new { tenant = tenant.Name });
        var names = new StringBuilder();
        foreach (var (index, id) in ids.Index())
        {
            names.Append(index == 0 ? "" : ", ").Append("@i").Append(index);
            asked.Add($"i{index}", id);
        }

        if (names.Length == 0)
            return [];
        var command = new CommandDefinition(Select.Replace("{0}", names.ToString(), StringComparison.Ordinal), asked, cancellationToken: cancel);
        var rows = await database.ReadAsync(connection => connection.QueryAsync<StoredVisit>(command), cancel);
        return rows.Where(row => row.IsWhole).ToDictionary(row => row.EvaluationId, StringComparer.Ordinal);
    }
}

/// <summary>A stored record with what was said of it, as bytes.</summary>
internal sealed class StoredVisit
{
    public required string EvaluationId { get; init; }

    /// <summary>The record as it was posted on its own.</summary>
    public byte[]? Record { private get; init; }

    /// <summary>Its evaluation.</summary>
    public byte[]? Evaluation { private get; init; }

    /// <summary>The record of an audit.</summary>
    public byte[]? PackedRecord { private get; init; }

    /// <summary>What the audit says of it.</summary>
    public byte[]? Answer { private get; init; }

    /// <summary>Are record and answer there?</summary>
    public bool IsWhole => (Record is not null && Evaluation is not null) || (PackedRecord is not null && Answer is not null);

    /// <summary>The record; null where the present reader refuses it.</summary>
    public ServiceRecord? ReadRecord() => RecordReader.Read(Record ?? Packed.Open(PackedRecord!)).Record;

    /// <summary>The evaluation; of an audit's record without the answers that are only counted.</summary>
    public Evaluation ReadEvaluation() => Evaluation is not null
        ? JsonSerializer.Deserialize(Packed.Open(Evaluation), EvaluationJson.Wire.Evaluation)!
        : JsonSerializer.Deserialize(Packed.Open(Answer!), StoredJson.Wire.AuditLine)!.Evaluation!;

    /// <summary>By whose law, from which day, and with what beside it the record was judged. The findings are passed over: reading them would cost more than making them.</summary>
    public (DateOnly AsOf, DateOnly LookedAtOn, EvaluationContext Context) ReadFrame()
    {
        DateOnly? asOf = null, lookedAtOn = null;
        var reader = new Utf8JsonReader(Packed.Open(Evaluation ?? Answer!));
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            if (reader.ValueTextEquals("evaluation"u8))
                reader.Read();
            else if (reader.ValueTextEquals("asOf"u8) && reader.Read())
                asOf = Database.DayOf(reader.GetString()!);
            else if (reader.ValueTextEquals("lookedAtOn"u8) && reader.Read())
                lookedAtOn = Database.DayOf(reader.GetString()!);
            else if (reader.ValueTextEquals("context"u8) && reader.Read())
                return (asOf!.Value, lookedAtOn!.Value, JsonSerializer.Deserialize(ref reader, StoredJson.Wire.EvaluationContext)!);
            else
                reader.Skip();
        }

        throw new InvalidDataException($"The evaluation {EvaluationId} does not say what it was judged by.");
    }
}
