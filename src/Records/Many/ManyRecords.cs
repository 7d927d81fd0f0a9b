using Records.Faults;
using Records.Reading;

namespace Records.Many;

/// <summary>How many records are written one behind the other.</summary>
public enum RecordFormat
{
    /// <summary>One JSON object a line.</summary>
    Ndjson,

    /// <summary>One JSON array of objects.</summary>
    JsonArray,

    /// <summary>Comma-separated values with a header of member paths, such as <c>combustion.readings.0.coPpm</c>.</summary>
    Csv,
}

/// <summary>Reads many records one after the other; never more than one of them is held.</summary>
public static class ManyRecords
{
    /// <summary>Yields every record. What is wrong with one of them is said of that one, and reading goes on behind it.</summary>
    /// <exception cref="ManyRecordsException">From some place on nothing can be read; what came before has been yielded.</exception>
    public static IAsyncEnumerable<RecordLine> ReadAsync(Stream stream, RecordFormat format, CancellationToken cancel) => format switch
    {
        RecordFormat.Ndjson => ReadLinesAsync(stream, cancel),
        RecordFormat.JsonArray => JsonArrayReader.ReadAsync(stream, RecordLine.MaxBytes, cancel),
        _ => CsvRecordReader.ReadAsync(stream, cancel),
    };

    private static async IAsyncEnumerable<RecordLine> ReadLinesAsync(
        Stream stream, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancel)
    {
        await foreach (var line in NdjsonReader.ReadAsync(stream, RecordLine.MaxBytes, cancel))
            yield return line.IsTooLong ? RecordLine.TooLong(line.Number) : new RecordLine(line.Number, line.Utf8);
    }
}

/// <summary>From some place on the records cannot be told from each other.</summary>
public sealed class ManyRecordsException(string code, string detail) : Exception(detail)
{
    /// <summary>The fault, of the whole body.</summary>
    public Fault Fault { get; } = new("#", code, detail);
}
