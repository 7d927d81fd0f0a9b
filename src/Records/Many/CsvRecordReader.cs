using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Unicode;
using CsvHelper;
using Records.Faults;

namespace Records.Many;

/// <summary>
/// Turns each row of CSV (RFC 4180, UTF-8, commas) into the JSON of one record, which is then read as strictly as any other. The header
/// names members by their path; an empty cell means "not recorded", and <c>[]</c> in the column of a list states "none".
/// </summary>
internal static class CsvRecordReader
{
    public static async IAsyncEnumerable<RecordLine> ReadAsync(Stream stream, [EnumeratorCancellation] CancellationToken cancel)
    {
        CsvMalformedReason? malformed = null;
        var options = new CsvReaderOptions
        {
            Separator = ',',
            HasHeader = false,
            TrimWhitespace = false,
            MaxRecordSize = RecordLine.MaxBytes,
            TrackLineNumbers = true,
            OnMalformedRecord = record => malformed = record.Reason,
        };
        await using var reader = CsvReader.Create(stream, options, leaveOpen: true);
        if (!await NextAsync(reader, cancel))
            yield break;

        // What a row costs is bounded by its length; whoever has left is not worked for.
        var header = CsvHeader.Of(reader.Current.ToArray());
        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            malformed = null;
            if (!await NextAsync(reader, cancel))
                yield break;
            yield return LineOf(reader, header, malformed);
        }
    }

    private static async Task<bool> NextAsync(CsvReader reader, CancellationToken cancel)
    {
        try
        {
            return await reader.ReadAsync(cancel);
        }
        catch (CsvFormatException)
        {
            throw new ManyRecordsException(FaultCodes.NotCsv, string.Create(CultureInfo.InvariantCulture,
                $"Behind line {reader.LineNumber} a row has more than {RecordLine.MaxBytes} bytes: a quote is open, most likely. From there on nothing can be read."));
        }
    }

    private static RecordLine LineOf(CsvReader reader, CsvHeader header, CsvMalformedReason? malformed)
    {
        var number = reader.LineNumber;
        if (malformed is not null)
            return Faulty(FaultCodes.NotCsv, "A quote in the row is out of place, or never closed.");
        if (reader.FieldCount != header.Columns)
            return Faulty(FaultCodes.NotCsv, string.Create(CultureInfo.InvariantCulture, $"The row has {reader.FieldCount} cells, the header {header.Columns}."));
        if (!Utf8.IsValid(reader.RawRecord))
            return Faulty(FaultCodes.NotUtf8, "The row is not UTF-8.");

        var cells = Enumerable.Range(0, reader.FieldCount).Select(column => reader.GetSpan(column).ToArray()).ToArray();
        var json = new MemoryStream();
        using (var writer = new Utf8JsonWriter(json))
            header.Write(writer, cells);
        return new RecordLine(number, json.ToArray());

        RecordLine Faulty(string code, string detail) => new(number, default, new Fault("#", code, detail));
    }
}
