using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text.Json;
using Findings;
using RuleEngine;

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

        Summarise(output, answers, watch.Elapsed);
        output.WriteLine($"""
            Where to look next
              http://127.0.0.1:{port}/docs                 every route, to try in the browser
              http://127.0.0.1:{port}/v1/rules             the rules in force, each with its cases
              http://127.0.0.1:{port}/v1/evaluations/ID    one evaluation; add /record for what was posted
            """);
        if (!once)
        {
            output.WriteLine("The service stays up. Press Ctrl+C to end it; the demo's records then go with it.");
            await app.WaitForShutdownAsync(stop);
        }
        else
        {
            await app.StopAsync(stop);
        }

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

    private static void Summarise(TextWriter output, List<(DemoSituation Situation, Evaluation Evaluation)> answers, TimeSpan took)
    {
        output.WriteLine($"{answers.Count} records judged and stored in {took.TotalSeconds:0.0} s");
        output.WriteLine();
        foreach (var outcome in Enum.GetValues<OverallOutcome>())
            output.WriteLine($"  {answers.Count(answer => answer.Evaluation.Outcome == outcome),4}  {outcome.ToString().ToLowerInvariant()}");
        output.WriteLine();

        output.WriteLine("Unsafe: needs somebody today");
        foreach (var (_, evaluation) in answers.Where(answer => answer.Evaluation.Outcome == OverallOutcome.Unsafe))
        {
            output.WriteLine($"  {evaluation.RecordId}  {(evaluation.Closing.Allowed ? "made safe on the record" : "NOT made safe on the record")}  /v1/evaluations/{evaluation.EvaluationId}");
            foreach (var finding in evaluation.Findings.Where(finding => finding.Outcome == Outcome.Unsafe))
                output.WriteLine($"      {finding.RuleId}: {finding.Message}");
        }

        output.WriteLine();
        output.WriteLine("Incomplete: what the records leave open most often");
        WriteMostFrequent(output, answers.Where(answer => answer.Evaluation.Outcome == OverallOutcome.Incomplete)
            .SelectMany(answer => answer.Evaluation.Missing.Select(item => item.Ask)));
        output.WriteLine();
        output.WriteLine("Advisory: what to mind most often");
        WriteMostFrequent(output, answers.SelectMany(answer => answer.Evaluation.Findings)
            .Where(finding => finding.Outcome == Outcome.Advisory).Select(finding => finding.Title));
        output.WriteLine();
    }

    private static void WriteMostFrequent(TextWriter output, IEnumerable<string> texts)
    {
        foreach (var group in texts.GroupBy(text => text, StringComparer.Ordinal).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).Take(ShownOfAKind))
            output.WriteLine($"  {group.Count(),4}  {group.Key}");
    }
}
