using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CsvHelper;

namespace ComplianceApi.Api.Requests;

/// <summary>Writes any number of rows as they come.</summary>
internal static class RowStream
{
    /// <summary>Media type of rows of JSON, one a line.</summary>
    public const string LinesMediaType = "application/x-ndjson";

    /// <summary>One row of JSON a line.</summary>
    public static async Task WriteLinesAsync<T>(Stream stream, IAsyncEnumerable<T> rows, JsonTypeInfo<T> type, CancellationToken cancel)
    {
        await foreach (var row in rows.WithCancellation(cancel))
        {
            await stream.WriteAsync(JsonSerializer.SerializeToUtf8Bytes(row, type), cancel);
            await stream.WriteAsync("\n"u8.ToArray(), cancel);
        }
    }

    /// <summary>CSV; a text that a spreadsheet would run as a formula gets an apostrophe in front.</summary>
    public static async Task WriteCsvAsync<T>(Stream stream, string[] head, IAsyncEnumerable<T> rows, Func<T, string[]> cells, CancellationToken cancel)
    {
        var csv = CsvWriter.Create(stream, new CsvWriterOptions { Injection = CsvInjection.Escape }, leaveOpen: true);
        csv.WriteRecord(head);
        await foreach (var row in rows.WithCancellation(cancel))
        {
            foreach (var cell in cells(row))
                csv.WriteField(cell);
            await csv.EndRecordAsync(cancel);
        }

        await csv.FlushAsync(cancel);
        await csv.DisposeAsync();
    }
}
