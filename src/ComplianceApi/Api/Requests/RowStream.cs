using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CsvHelper;

namespace ComplianceApi.Api.Requests;

/// <summary>Writes any number of rows as they come.</summary>
internal static class RowStream
{
    /// <summary>Media type of rows of JSON, one a line.</summary>
    public const string LinesMediaType = "application/x-ndjson";

    /// <summary>Media type of a table.</summary>
    public const string TableMediaType = "text/csv";

    /// <summary>Each row of these routes' answers is sent when it is written.</summary>
    public static RouteHandlerBuilder StreamsLines<T>(this RouteHandlerBuilder route) =>
        route.Streams(LinesMediaType).WithMetadata(new LinesOf(typeof(T)));

    /// <inheritdoc cref="StreamsLines" />
    public static RouteHandlerBuilder StreamsTable(this RouteHandlerBuilder route) => route.Streams(TableMediaType);

    private static RouteHandlerBuilder Streams(this RouteHandlerBuilder route, string mediaType)
    {
        route.DisableRequestTimeout();
        return route.Produces<Stream>(200, mediaType).WithMetadata(new StreamedMetadata());
    }

    /// <summary>Answers with one row of JSON a line.</summary>
    public static IResult Lines<T>(IAsyncEnumerable<T> rows, JsonTypeInfo<T> type, CancellationToken cancel) =>
        Results.Stream(stream => WriteLinesAsync(stream, rows, type, cancel), LinesMediaType);

    /// <summary>Answers with a table for a spreadsheet.</summary>
    public static IResult Table(Func<Stream, Task> write, string fileName) => Results.Stream(write, $"{TableMediaType}; charset=utf-8", fileName);

    private static async Task WriteLinesAsync<T>(Stream stream, IAsyncEnumerable<T> rows, JsonTypeInfo<T> type, CancellationToken cancel)
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

/// <summary>Marks a route whose answer arrives row by row, and so is not packed.</summary>
internal sealed class StreamedMetadata;

/// <summary>Says of a route that answers with lines of JSON what each of them is: the document names it as x-lines.</summary>
/// <param name="Line">Its type.</param>
internal sealed record LinesOf(Type Line);
