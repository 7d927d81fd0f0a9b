using System.CommandLine;
using System.Text.Json;
using Audits;
using Findings;
using ServiceRecords;

namespace ComplianceApi;

/// <summary>Audits a file of records of any length, with the same engine as the service and without one running.</summary>
internal static class AuditCommand
{
    public static Command Make()
    {
        var file = new Argument<FileInfo>("file") { Description = "Records: .csv, .json (an array), or else one a line (NDJSON)." };
        var lines = new Option<FileInfo?>("--lines") { Description = "Write what is said of each record here, a line of JSON each." };
        var report = new Option<FileInfo?>("--report") { Description = "Write the report here, as HTML." };
        var overrides = new Option<FileInfo?>("--overrides") { Description = "Your own limits, as the service reads them from Rules:Overrides." };
        var command = new Command("audit", "Audits a file of records and prints the summary as JSON. Exit code: 0 nothing unsafe or incomplete, 1 something is, 2 a record could not be judged.") { file, lines, report, overrides };
        command.SetAction((parsed, stop) => RunAsync(
            parsed.GetRequiredValue(file), parsed.GetValue(lines), parsed.GetValue(report), parsed.GetValue(overrides), parsed.InvocationConfiguration.Output, stop));
        return command;
    }

    private static async Task<int> RunAsync(FileInfo file, FileInfo? lines, FileInfo? report, FileInfo? overrides, TextWriter output, CancellationToken stop)
    {
        if (Check.Start(overrides, output) is not { } engine)
            return 2;

        // No store: a record that names a profile is told that there is none.
        using var folder = new TemporaryFolder("audit-");
        using var database = Database.Open(folder.File("empty.db"));
        var judge = new LineJudge(engine, new ProfileStore(database), new HistoryStore(database), Tenant.Local, TimeProvider.System.GetUtcNow());
        var sums = new SummaryBuilder(judge.LookedAtOn);
        var read = 0L;
        try
        {
            await using var records = file.OpenRead();
            await using var each = lines?.Create() ?? Stream.Null;
            await foreach (var judged in judge.JudgeAllAsync(ManyRecords.ReadAsync(records, FormatOf(file), stop), stop))
            {
                read++;
                sums.Add(judged);
                if (lines is null)
                    continue;
                await each.WriteAsync(JsonSerializer.SerializeToUtf8Bytes(judged.Line with { Evaluation = judged.Line.Evaluation?.Show(Include.Problems) }, AuditJson.Wire.AuditLine), stop);
                each.WriteByte((byte)'\n');
            }
        }
        catch (Exception fault) when (fault is ManyRecordsException or IOException or UnauthorizedAccessException)
        {
            output.WriteLine($"{file.Name}: {fault.Message} {read} records were judged before.");
            return 2;
        }

        if (read == 0)
        {
            output.WriteLine($"{file.Name}: there is no record in it");
            return 2;
        }

        var summary = sums.ToSummary(read);
        output.WriteLine(JsonSerializer.Serialize(summary, AuditJson.Wire.AuditSummary));
        if (report is not null)
            await File.WriteAllTextAsync(report.FullName, await AuditReport.OfAsync($"Audit of {file.Name}", summary, engine.Catalogue.Limits), stop);
        return summary switch
        {
            { Records.Rejected: > 0 } => 2,
            { Outcomes: { Unsafe: > 0 } or { Incomplete: > 0 } } => 1,
            _ => 0,
        };
    }

    private static RecordFormat FormatOf(FileInfo file) => file.Extension switch
    {
        ".csv" => RecordFormat.Csv,
        ".json" => RecordFormat.JsonArray,
        _ => RecordFormat.Ndjson,
    };
}
