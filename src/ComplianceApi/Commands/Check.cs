using System.CommandLine;
using System.Text.Json;
using Checking;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Commands.Terminal;
using ComplianceApi.Problems;
using Findings;
using Jobs.Queue;
using Kernel;
using Kernel.Catalogues;
using Records.Faults;
using Records.Many;
using Records.Reading;
using Storage;
using Visits.Judging;

namespace ComplianceApi.Commands;

/// <summary>Checks records from files, with the same engine as the service and without one running.</summary>
internal static class Check
{
    public static Command Make()
    {
        var files = new Argument<FileInfo[]>("file") { Description = "Record files: JSON (one record) or NDJSON (one record a line).", Arity = ArgumentArity.OneOrMore };
        var format = Common.OneOf("--format", "text: to read; json: a line of JSON for each record, as an audit answers.", CheckFormat.Text);
        var overrides = Common.Overrides();
        var command = new Command("check", "Check records and print what they show. Exit code: 0 pass or advisory, 1 unsafe or incomplete, 2 unusable input.") { files, format, overrides, StoreOptions.Path, StoreOptions.Connection, StoreToLookIn.OfTenant };
        command.SetAction((parsed, stop) => StoreToLookIn.WithAsync(parsed, store => RunAsync(
            parsed.GetRequiredValue(files), parsed.Value<CheckFormat>(format), parsed.GetValue(overrides), store, parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error, stop)));
        return command;
    }

    private static async Task<int> RunAsync(IReadOnlyList<FileInfo> files, CheckFormat format, FileInfo? overrides, StoreToLookIn store, TextWriter output, TextWriter error, CancellationToken stop)
    {
        if (Start(overrides, error) is not { } engine)
            return Common.Unusable;

        var now = TimeProvider.System.GetUtcNow();
        var check = new RecordCheck(engine, new ProfileStore(store.Database), new EvaluationStore(store.Database, engine.Law), store.Tenant, now) { LookedIn = store.Words, Detail = Detail.Problems };
        var histories = new HistoryStore(store.Database, engine.Law);
        var sheet = new Sheet(output);
        var exitCode = Common.Good;
        foreach (var file in files)
        {
            var records = 0;
            try
            {
                await foreach (var (place, line) in ReadAsync(file, stop))
                {
                    records++;
                    var said = await CheckOneAsync(line);
                    if (format == CheckFormat.Json)
                        await output.WriteLineAsync(JsonSerializer.Serialize(said.Addressed(), AuditJson.Wire.AuditLine));
                    else if (said.Evaluation is { } evaluation)
                        EvaluationText.Write(sheet, evaluation, place);

                    if (said.Problem is { } problem)
                        Refuse(new Sheet(error), place, problem);
                    exitCode = Math.Max(exitCode, said.Evaluation?.Outcome switch
                    {
                        null => Common.Unusable,
                        OverallOutcome.Unsafe or OverallOutcome.Incomplete => Common.Bad,
                        _ => Common.Good,
                    });
                }
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                await error.WriteLineAsync($"{file.Name}: cannot be read ({fault.Message})");
                exitCode = Common.Unusable;
                continue;
            }
            catch (OperationCanceledException)
            {
                return Common.Ended;
            }

            if (records == 0)
            {
                await error.WriteLineAsync($"{file.Name}: there is no record in it");
                exitCode = Common.Unusable;
            }
        }

        return exitCode;

        async Task<AuditLine> CheckOneAsync(RecordLine line)
        {
            var read = line.Read(engine.Catalogue.JurisdictionCodes);
            if (!read.IsRecord)
                return new AuditLine { Line = line.Number, Problem = LineProblem.Of(read.Kind.Value, read.Faults) };

            var said = await check.CheckAsync(read.Record, (await histories.FindAsync(store.Tenant, [read.Record], now, stop))[0], stop);
            return said.Evaluation is { } evaluation
                ? new AuditLine { Line = line.Number, RecordId = read.Record.RecordId, Evaluation = evaluation.Show(Include.Passes) }
                : new AuditLine { Line = line.Number, RecordId = read.Record.RecordId, Problem = LineProblem.Of(FaultKind.Invalid, said.Faults) };
        }
    }

    /// <summary>The engine with the shipped rules and the deployer's own limits; null when they do not fit, which is then said.</summary>
    internal static ComplianceEngine? Start(FileInfo? overrides, TextWriter error)
    {
        try
        {
            return ShippedRules.Start(Overrides.ReadFile(overrides?.FullName));
        }
        catch (CatalogueException refusal)
        {
            error.WriteLine(refusal.Message);
            return null;
        }
    }

    /// <summary>Every fault with its place.</summary>
    internal static void Refuse(Sheet sheet, string place, LineProblem problem)
    {
        sheet.Wrapped("REJECTED  ", $"{place} is not a usable record:", headStyle: Sheet.StyleOf("rejected"));
        foreach (var fault in problem.Errors)
            sheet.Wrapped("  - ", $"{fault.Pointer}  {fault.Detail}");
    }

    private static async IAsyncEnumerable<(string Place, RecordLine Line)> ReadAsync(
        FileInfo file, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken stop)
    {
        await using var stream = file.OpenRead();
        if (await IsLinesAsync(file, stop))
        {
            await foreach (var line in ManyRecords.ReadAsync(stream, RecordFormat.Ndjson, stop))
                yield return ($"{file.Name} line {line.Number}", line);
        }
        else
        {
            yield return (file.Name, file.Length > RecordLine.MaxBytes
                ? new RecordLine(1, default, new Fault("#", FaultCodes.TooLong, $"The record is longer than {RecordLine.MaxBytes} bytes and was not read."))
                : new RecordLine(1, await File.ReadAllBytesAsync(file.FullName, stop)));
        }
    }

    /// <summary>One record a line when the name says so, or when the first line is a whole JSON object.</summary>
    private static async Task<bool> IsLinesAsync(FileInfo file, CancellationToken stop)
    {
        if (file.Extension is ".ndjson" or ".jsonl")
            return true;

        await using var stream = file.OpenRead();
        await foreach (var line in NdjsonReader.ReadAsync(stream, RecordLine.MaxBytes, stop))
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

/// <summary>How a checked record is printed.</summary>
internal enum CheckFormat
{
    /// <summary>To read.</summary>
    Text,

    /// <summary>A line of JSON for each record.</summary>
    Json,
}
