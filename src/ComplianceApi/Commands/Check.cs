using System.Text.Json;
using Findings;
using RuleEngine;
using Rules;
using ServiceRecords;

namespace ComplianceApi;

/// <summary>Checks records from files, with the same engine as the service and without one running.</summary>
internal static class Check
{
    private const int LongestRecordBytes = 1 << 20;

    /// <summary>Prints what each record shows; gives 0 for pass or advisory, 1 for unsafe or incomplete, 2 for unusable input.</summary>
    public static async Task<int> RunAsync(IReadOnlyList<FileInfo> files, FileInfo? overrides, TextWriter output, CancellationToken stop)
    {
        if (Start(overrides, output) is not { } engine)
            return 2;

        var exitCode = 0;
        foreach (var file in files)
        {
            var records = 0;
            await foreach (var (place, json) in ReadAsync(file, stop))
            {
                records++;
                exitCode = Math.Max(exitCode, CheckOne(engine, place, json, output));
            }

            if (records == 0)
            {
                output.WriteLine($"{file.Name}: there is no record in it");
                exitCode = 2;
            }
        }

        return exitCode;
    }

    internal static ComplianceEngine? Start(FileInfo? overrides, TextWriter output)
    {
        try
        {
            return ComplianceEngine.Start(RuleCatalogue.Of(typeof(RuleIds).Assembly, Overrides.ReadFile(overrides?.FullName)));
        }
        catch (CatalogueException refusal)
        {
            output.WriteLine(refusal.Message);
            return null;
        }
    }

    private static int CheckOne(ComplianceEngine engine, string place, ReadOnlyMemory<byte>? json, TextWriter output)
    {
        if (json is not { } bytes)
        {
            output.WriteLine($"{place}: cannot be read, or is longer than {LongestRecordBytes} bytes");
            return 2;
        }

        var read = RecordReader.Read(bytes);
        if (!read.IsRecord)
        {
            output.WriteLine($"{place}: not a usable record");
            foreach (var fault in read.Faults)
                output.WriteLine($"  {fault.Pointer}  {fault.Detail}");
            return 2;
        }

        var evaluation = engine.Evaluate(read.Record);
        EvaluationText.Write(output, evaluation, place);
        return evaluation.Outcome is OverallOutcome.Unsafe or OverallOutcome.Incomplete ? 1 : 0;
    }

    private static async IAsyncEnumerable<(string Place, ReadOnlyMemory<byte>? Json)> ReadAsync(
        FileInfo file, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken stop)
    {
        if (!file.Exists)
        {
            yield return (file.Name, null);
            yield break;
        }

        await using var stream = file.OpenRead();
        if (!await IsLinesAsync(file, stop))
        {
            yield return (file.Name, file.Length > LongestRecordBytes ? null : await File.ReadAllBytesAsync(file.FullName, stop));
            yield break;
        }

        await foreach (var line in NdjsonReader.ReadAsync(stream, LongestRecordBytes, stop))
            yield return ($"{file.Name} line {line.Number}", line.IsTooLong ? null : line.Utf8);
    }

    /// <summary>One record a line when the name says so, or when the first line is a whole JSON object.</summary>
    private static async Task<bool> IsLinesAsync(FileInfo file, CancellationToken stop)
    {
        if (file.Extension is ".ndjson" or ".jsonl")
            return true;

        await using var stream = file.OpenRead();
        await foreach (var line in NdjsonReader.ReadAsync(stream, LongestRecordBytes, stop))
            return !line.IsTooLong && IsObject(line.Utf8.Span);

        return false;
    }

    private static bool IsObject(ReadOnlySpan<byte> line)
    {
        var reader = new Utf8JsonReader(line, new JsonReaderOptions { MaxDepth = 64 });
        try
        {
            return reader.Read() && reader.TokenType == JsonTokenType.StartObject && reader.TrySkip() && !reader.Read();
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
