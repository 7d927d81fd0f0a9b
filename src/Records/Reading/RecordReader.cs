using System.Text.Json;
using System.Text.Unicode;
using Records.Faults;
using Records.Validation;

namespace Records.Reading;

/// <summary>
/// Reads one posted record, strictly. A right record takes the fast way: one deserialization, and the validators find it sound. Any other
/// is read once more along the metadata, so that one answer names every fault. A byte order mark before the record is skipped.
/// </summary>
public static class RecordReader
{
    /// <summary>Deepest nesting of objects and lists that is read.</summary>
    public const int MaxDepth = 16;

    private static readonly ServiceRecordValidator Validator = new();

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads a record from its JSON text in UTF-8.</summary>
    /// <param name="utf8">The text.</param>
    /// <param name="jurisdictions">Codes of those whose law the rules hold: a record of another is refused. Null: whatever is written is read, as of records that were taken before.</param>
    public static ReadResult Read(ReadOnlyMemory<byte> utf8, IReadOnlyList<string>? jurisdictions = null)
    {
        utf8 = utf8.Span.StartsWith(ByteOrderMark) ? utf8[ByteOrderMark.Length..] : utf8;
        return ReadFast(utf8) is { } record && jurisdictions?.Contains(record.Jurisdiction, StringComparer.Ordinal) != false
            ? new ReadResult(record)
            : new ReadResult(FindFaults(utf8, jurisdictions));
    }

    /// <summary>The record, or null when anything about it is wrong or in doubt.</summary>
    internal static ServiceRecord? ReadFast(ReadOnlyMemory<byte> utf8)
    {
        try
        {
            var record = Utf8.IsValid(utf8.Span) ? JsonSerializer.Deserialize(utf8.Span, RecordJson.Default.ServiceRecord) : null;
            return record is not null && Validator.IsSound(record) ? record : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Every fault of a body; none only when the fast way takes it as well.</summary>
    /// <exception cref="InvalidOperationException">The two ways disagree: a fault of this program, never read as a record.</exception>
    private static List<Fault> FindFaults(ReadOnlyMemory<byte> utf8, IReadOnlyList<string>? jurisdictions)
    {
        var faults = FaultFinder.Find(utf8, Validator, jurisdictions);
        return faults.Count > 0 ? faults : throw new InvalidOperationException("A record was refused, and no fault was found in it.");
    }
}
