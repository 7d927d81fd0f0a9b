using System.CommandLine;
using Checking;
using ComplianceApi.Pages;
using Jobs.Queue;
using Jobs.Summary;
using Records.Many;
using Storage;
using Wording;

namespace ComplianceApi.Commands.Audit;

/// <summary>Audits a file of records of any length, with the same engine as the service and without one running.</summary>
internal static class AuditCommand
{
    public static Command Make()
    {
        var file = new Argument<FileInfo>("file") { Description = "Records: .csv, .json (an array), or else one a line (NDJSON)." };
        var format = Common.OneOf("--format",
            "text: to read; json: the summary; ndjson: a line for each record and the summary last, as the service answers; csv: the findings, for a spreadsheet; junit: a test suite for each record, for build servers.", AuditFormat.Text);
        var lines = new Option<FileInfo?>("--lines") { Description = "Write what is said of each record here as well, a line of JSON each.", HelpName = "file" };
        var report = new Option<FileInfo?>("--report") { Description = "Write the report here as well, as HTML.", HelpName = "file" };
        var overrides = Common.Overrides();
        var command = new Command("audit", "Audit a file of records, such as those of a month. Exit code: 0 nothing unsafe or incomplete, 1 something is, 2 a record could not be judged.") { file, format, lines, report, overrides, StoreOptions.Path, StoreOptions.Connection, StoreToLookIn.OfTenant };
        command.SetAction(async (parsed, stop) =>
        {
            var (output, error) = (parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error);
            await using var printer = AuditPrinter.For(parsed.Value<AuditFormat>(format), parsed.GetRequiredValue(file).Name, output);
            return await StoreToLookIn.WithAsync(parsed, store =>
                RunAsync(parsed.GetRequiredValue(file), printer, parsed.GetValue(lines), parsed.GetValue(report), parsed.GetValue(overrides), store, error, stop));
        });
        return command;
    }

    private static async Task<int> RunAsync(FileInfo file, AuditPrinter printer, FileInfo? lines, FileInfo? report, FileInfo? overrides, StoreToLookIn store, TextWriter error, CancellationToken stop)
    {
        if (Check.Start(overrides, error) is not { } engine)
            return Common.Unusable;

        var database = store.Database;
        var judge = new LineJudge(
            engine, new ProfileStore(database), new EvaluationStore(database, engine.Law), new HistoryStore(database, engine.Law), store.Tenant, TimeProvider.System.GetUtcNow(), store.Words);
        var sums = new SummaryBuilder(judge.LookedAtOn);
        var dangers = new List<UnsafeRecord>();
        var read = 0L;
        try
        {
            await using var records = file.OpenRead();
            await using var each = lines?.Create() ?? Stream.Null;
            await AuditProgress.ShowAsync(error, records.Length, async progress =>
            {
                await foreach (var judged in judge.JudgeAllAsync(ManyRecords.ReadAsync(records, FormatOf(file), stop), stop))
                {
                    read++;
                    sums.Add(judged);
                    if (report is not null && UnsafeRecord.Of(judged.Line, judged.Record) is { } danger)
                        dangers.Add(danger);
                    await printer.AddAsync(judged, stop);
                    if (lines is not null)
                        await JsonLines.WriteAsync(each, judged, stop);
                    progress(records.Position, read);
                }
            });
            if (read == 0)
            {
                await error.WriteLineAsync($"{file.Name}: there is no record in it");
                return Common.Unusable;
            }

            var summary = sums.ToSummary(read, judge.Cautions);
            await printer.EndAsync(summary, stop);
            if (report is not null)
                await File.WriteAllTextAsync(report.FullName, await new AuditReport().OfAsync($"Audit of {file.Name}", summary, UnsafeRecord.Sorted(dangers), engine.Catalogue.Limits), stop);
            return summary switch
            {
                { Records.Rejected: > 0 } => Common.Unusable,
                { Outcomes: { Unsafe: > 0 } or { Incomplete: > 0 } } => Common.Bad,
                _ => Common.Good,
            };
        }
        catch (Exception fault) when (fault is ManyRecordsException or IOException or UnauthorizedAccessException)
        {
            await error.WriteLineAsync($"{file.Name}: {fault.Message} {Say.Of(read, "record was", "records were")} judged before; there is no summary.");
            return Common.Unusable;
        }
        catch (OperationCanceledException)
        {
            await error.WriteLineAsync($"Ended early: {Say.Of(read, "record was", "records were")} judged; there is no summary.");
            return Common.Ended;
        }
    }

    private static RecordFormat FormatOf(FileInfo file) => file.Extension.ToLowerInvariant() switch
    {
        ".csv" => RecordFormat.Csv,
        ".json" => RecordFormat.JsonArray,
        _ => RecordFormat.Ndjson,
    };
}

/// <summary>How an audit is printed.</summary>
internal enum AuditFormat
{
    /// <summary>To read.</summary>
    Text,

    /// <summary>The summary.</summary>
    Json,

    /// <summary>A line for each record, and the summary last.</summary>
    Ndjson,

    /// <summary>The findings, for a spreadsheet.</summary>
    Csv,

    /// <summary>A test suite for each record.</summary>
    Junit,
}
