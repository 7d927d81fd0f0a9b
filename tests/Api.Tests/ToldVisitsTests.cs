using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;

namespace Api.Tests;

/// <summary>The page of the three visits is what the running service says of them. With REWRITE_VISITS=1 it is written anew; no automatic run sets it.</summary>
public sealed class ToldVisitsTests
{
    private static readonly string Repository = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", ".."));
    private static readonly string Page = Path.Combine(Repository, "rules", "VISITS.md");

    [Fact]
    public async Task The_committed_page_is_what_the_service_says_of_the_visits()
    {
        using var running = new RunningService("--urls=http://127.0.0.1:0");
        using var client = await running.Listening();
        var told = new List<ToldVisit>();
        foreach (var file in Directory.GetFiles(Path.Combine(Repository, "tests", "records", "told"), "*.json"))
            told.Add(await ToldVisit.PostAsync(client, file));
        told.Sort((one, other) => string.CompareOrdinal(one.Whole.RecordId, other.Whole.RecordId));

        // Each as its engineer would expect it: the half of it is held, the whole closes.
        Assert.All(told, visit => Assert.False(visit.HalfFilled.Closing.Allowed));
        Assert.All(told, visit => Assert.NotEmpty(visit.HalfFilled.Missing));
        Assert.All(told, visit => Assert.Empty(visit.Whole.Missing));
        Assert.Equal(
            ["pump-changed Pass repair  ", "boiler-condemned Unsafe visit TakenOutOfUse True", "landlord-check-with-a-dead-meter-display Pass check  "],
            told.Select(visit => $"{visit.Name} {visit.Whole.Outcome} {visit.Whole.Closing.ClosesAs} {visit.Whole.Situation?.State} {visit.Whole.Situation?.Handled}"));

        var page = ToldVisitsPage.Of(told);
        if (Environment.GetEnvironmentVariable("REWRITE_VISITS") == "1")
            await File.WriteAllTextAsync(Page, page);
        Assert.True(await File.ReadAllTextAsync(Page) == page, "rules/VISITS.md is stale: run tests/rewrite and look at the difference.");
    }
}

/// <summary>A visit as an engineer tells it, and what the service says of its record, half filled and whole.</summary>
/// <param name="Name">Name of its file in tests/records/told.</param>
/// <param name="Title">What it was.</param>
/// <param name="Done">What was done, a paragraph each.</param>
/// <param name="Later">JSON Pointers of what the half-filled record does not have yet.</param>
/// <param name="HalfFilled">What was said of that, without storing it.</param>
/// <param name="Whole">What was said at the end.</param>
internal sealed record ToldVisit(string Name, string Title, IReadOnlyList<string> Done, IReadOnlyList<string> Later, Evaluation HalfFilled, Evaluation Whole)
{
    public static async Task<ToldVisit> PostAsync(HttpClient client, string file)
    {
        var told = JsonNode.Parse(await File.ReadAllBytesAsync(file))!;
        var later = told["later"]!.AsArray().Select(pointer => pointer.Text()).ToList();
        var whole = told["record"]!;
        var half = whole.DeepClone();
        foreach (var pointer in later)
            Drop(half, pointer.Split('/')[1..]);
        return new ToldVisit(
            Path.GetFileNameWithoutExtension(file), told["title"].Text(), [.. told["done"]!.AsArray().Select(paragraph => paragraph.Text())], later,
            await Said(await client.PostRecord(half.ToJsonString(), "?store=false&include=all"), HttpStatusCode.OK),
            await Said(await client.PostRecord(whole.ToJsonString(), "?include=all"), HttpStatusCode.Created));
    }

    private static async Task<Evaluation> Said(HttpResponseMessage response, HttpStatusCode expected) =>
        JsonSerializer.Deserialize((await response.Read(expected)).ToJsonString(), EvaluationJson.Wire.Evaluation)!;

    private static void Drop(JsonNode record, string[] steps)
    {
        var holder = steps[..^1].Aggregate(record, (node, step) => node is JsonArray list ? list[Index(step)]! : node[step]!);
        if (holder is JsonArray items)
            items.RemoveAt(Index(steps[^1]));
        else
            Assert.True(holder.AsObject().Remove(steps[^1]), $"There is no /{string.Join('/', steps)}.");

        static int Index(string step) => int.Parse(step, CultureInfo.InvariantCulture);
    }
}
