using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text.Json;
using Findings;
using RuleEngine;
using ServiceRecords;

namespace ComplianceApi;

/// <summary>Starts the service, posts the demo month to it over HTTP as a job-management program would, and prints what came back.</summary>
internal static class Demo
{
    private const int ShownOfAKind = 5;

    public static async Task<int> RunAsync(int port, bool once, TextWriter output, CancellationToken stop)
    {
        using var folder = new TemporaryFolder("compliance-demo-");
        await using var app = Service.Build([$"--urls=http://127.0.0.1:{port}", $"--Store:Path={folder.File("demo.db")}", "--Logging:LogLevel:Default=Warning", "--Docs:Enabled=true"]);
        await app.StartAsync(stop);

        output.WriteLine($"The service listens on http://127.0.0.1:{port}. Posting an invented month of an invented landlord, Saltmarsh Row Homes.");
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        var watch = Stopwatch.StartNew();
        var answers = new List<(DemoSituation Situation, Evaluation Evaluation)>();
        foreach (var (situation, json) in DemoMonth.Records(app.Services.GetRequiredService<ComplianceEngine>().Catalogue.ExampleRecord))
            answers.Add((situation, await PostAsync(client, json, stop)));

        Summarise(new Sheet(output), answers, watch.Elapsed);
        if (once)
        {
            await app.StopAsync(stop);
            return 0;
        }

        output.WriteLine($"""
            WHERE TO LOOK NEXT
              http://127.0.0.1:{port}/                   in the browser: the rules, and any of
                                                       the evaluations above
              http://127.0.0.1:{port}/docs               every route, to try
              http://127.0.0.1:{port}/v1/evaluations/ID  one evaluation as JSON; add /record
                                                       for what was posted
            The service stays up. Press Ctrl+C to end it; the demo's records then go with it.
            """);
        await app.WaitForShutdownAsync(stop);
        return 0;
    }

    private static async Task<Evaluation> PostAsync(HttpClient client, byte[] json, CancellationToken stop)
    {
        using var body = new ByteArrayContent(json) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
        using var response = await client.PostAsync(new Uri("/v1/evaluations", UriKind.Relative), body, stop);
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
