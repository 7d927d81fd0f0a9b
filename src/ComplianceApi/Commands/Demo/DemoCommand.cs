using System.CommandLine;
using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text.Json;
using ComplianceApi.Commands.Terminal;
using ComplianceApi.Hosting;
using Findings;
using Visits.Judging;
using Wire;
using Wording;

namespace ComplianceApi.Commands.Demo;

/// <summary>Starts the service, posts the demo month to it over HTTP as a job-management program would, and prints what came back.</summary>
internal static class DemoCommand
{
    private const int ShownOfAKind = 5;

    public static Command Make()
    {
        var once = new Option<bool>("--once") { Description = "End after the summary." };
        var urls = new Option<string?>("--urls") { Description = $"Where it listens; by default http://127.0.0.1:{Listening.UsualPort}.", HelpName = "url" };
        var save = new Option<FileInfo?>("--save")
        {
            Description = "Write the month to this file, as CSV where its name ends in .csv, else as NDJSON, and end; no service is started.",
            HelpName = "file",
        };
        var command = new Command("demo", "Start the service with a store of its own, post an invented month of records to it and print a summary.") { once, urls, save };
        command.SetAction((parsed, stop) => parsed.GetValue(save) is { } file
            ? DemoFile.SaveAsync(file, parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error, stop)
            : RunAsync(parsed.GetValue(urls), parsed.GetValue(once), parsed.InvocationConfiguration.Output, stop));
        return command;
    }

    private static async Task<int> RunAsync(string? urls, bool once, TextWriter output, CancellationToken stop)
    {
        using var folder = new TemporaryFolder("compliance-demo-");
        string[] settings = [$"--Store:Path={folder.File("demo.db")}", "--Store:Create=true", "--Logging:LogLevel:Default=Warning", "--Docs:Enabled=true"];
        await using var app = Service.Build(urls is null ? settings : [$"--urls={urls}", .. settings]);
        await app.StartAsync(stop);

        var address = app.Urls.First();
        output.WriteLine($"The service listens on {address}. Posting an invented month of an invented landlord, Saltmarsh Row Homes.");
        using var client = new HttpClient { BaseAddress = new Uri(address) };
        var watch = Stopwatch.StartNew();
        var answers = new List<(DemoSituation Situation, Evaluation Evaluation)>();
        foreach (var (situation, json) in DemoMonth.Records(app.Services.GetRequiredService<ComplianceEngine>().Catalogue.ExampleRecord))
            answers.Add((situation, await PostAsync(client, json, stop)));

        Summarise(new Sheet(output), answers, watch.Elapsed);
        if (once)
        {
            await app.StopAsync(stop);
            return Common.Good;
        }

        output.WriteLine($"""
            WHERE TO LOOK NEXT
              {address}/                   in the browser: the rules, and any of
                                                       the evaluations above
              {address}/docs               every route, to try
              {address}/v1/evaluations/ID  one evaluation as JSON; add /record
                                                       for what was posted
            The service stays up. Press Ctrl+C to end it; the demo's records then go with it.
            """);
        await app.WaitForShutdownAsync(stop);
        return Common.Good;
    }

    private static async Task<Evaluation> PostAsync(HttpClient client, byte[] json, CancellationToken stop)
    {
        using var body = new ByteArrayContent(json) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
        using var response = await client.PostAsync(new Uri("/v1/evaluations?include=all", UriKind.Relative), body, stop);
        var answer = await response.Content.ReadAsByteArrayAsync(stop);
        return response.IsSuccessStatusCode
            ? JsonSerializer.Deserialize(answer, EvaluationJson.Wire.Evaluation)!
            : throw new InvalidOperationException($"The service answered {(int)response.StatusCode}: {System.Text.Encoding.UTF8.GetString(answer)}");
    }

    private static void Summarise(Sheet sheet, List<(DemoSituation Situation, Evaluation Evaluation)> answers, TimeSpan took)
    {
        sheet.Wrapped("", $"{Say.Of(answers.Count, "record")} judged and stored in {Say.Number((decimal)took.TotalSeconds)} s");
        foreach (var outcome in Enum.GetValues<OverallOutcome>())
        {
            var word = WireNames.Of(outcome);
            sheet.Wrapped($"{answers.Count(answer => answer.Evaluation.Outcome == outcome),6}  {word.ToUpperInvariant(),-12}", OutcomeWords.Verdict(outcome), headStyle: Sheet.StyleOf(word));
        }

        sheet.Blank();
        sheet.Heading("ACT ON THESE");
        foreach (var (_, evaluation) in answers.Where(answer => answer.Evaluation.Outcome == OverallOutcome.Unsafe))
        {
            sheet.Wrapped("", $"{evaluation.RecordId}. {OutcomeWords.Closing(evaluation.Closing)} /evaluations/{evaluation.EvaluationId}", Sheet.StyleOf("pass"));
            foreach (var finding in evaluation.Findings.Where(finding => finding.Outcome == Outcome.Unsafe))
                EvaluationText.WriteFinding(sheet, finding, isBrief: true);
        }

        sheet.Heading("QUESTIONS LEFT OPEN MOST OFTEN");
        WriteMostFrequent(sheet, answers.Where(answer => answer.Evaluation.Outcome == OverallOutcome.Incomplete)
            .SelectMany(answer => answer.Evaluation.Missing.Select(item => item.Ask)));
        sheet.Blank();
        sheet.Heading("TO MIND MOST OFTEN");
        WriteMostFrequent(sheet, answers.SelectMany(answer => answer.Evaluation.Findings)
            .Where(finding => finding.Outcome == Outcome.Advisory).Select(finding => finding.Title));
        sheet.Blank();
        sheet.Heading("CAUTIONS");
        foreach (var caution in answers[0].Evaluation.Cautions)
            sheet.Wrapped("  - ", caution);
        sheet.Blank();
    }

    private static void WriteMostFrequent(Sheet sheet, IEnumerable<string> texts)
    {
        foreach (var group in texts.GroupBy(text => text, StringComparer.Ordinal).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).Take(ShownOfAKind))
            sheet.Wrapped($"{group.Count(),6}  ", group.Key);
    }
}
