using ComplianceApi.Api.Schemas;
using Records.Many;
using Wording;

namespace ComplianceApi.Commands.Demo;

/// <summary>Writes the demo month to a file, to audit it or to see what a month looks like.</summary>
public static class DemoFile
{
    /// <summary>Writes the month; gives the exit code.</summary>
    /// <param name="file">CSV where its name ends in .csv, else NDJSON; replaced where it is there.</param>
    /// <param name="output">Takes what was written.</param>
    /// <param name="error">Takes why it cannot be written.</param>
    /// <param name="stop">Cancels the operation.</param>
    public static async Task<int> SaveAsync(FileInfo file, TextWriter output, TextWriter error, CancellationToken stop)
    {
        var records = DemoMonth.Records(ShippedRules.Read().ExampleRecord).Select(one => one.Json).ToList();
        try
        {
            await using (var stream = file.Create())
            {
                if (string.Equals(file.Extension, ".csv", StringComparison.OrdinalIgnoreCase))
                    await CsvRecordWriter.WriteAsync(stream, records, stop);
                else
                    await WriteLinesAsync(stream, records, stop);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            await error.WriteLineAsync($"{file.FullName}: cannot be written ({fault.Message})");
            return Common.Unusable;
        }

        await output.WriteLineAsync($"{Say.Of(records.Count, "invented record")} written to {file.FullName}");
        return Common.Good;
    }

    private static async Task WriteLinesAsync(Stream stream, List<byte[]> records, CancellationToken stop)
    {
        foreach (var record in records)
        {
            await stream.WriteAsync(record, stop);
            stream.WriteByte((byte)'\n');
        }
    }
}
