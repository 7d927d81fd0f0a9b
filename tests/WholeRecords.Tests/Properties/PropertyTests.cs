using System.Text.Encodings.Web;
using System.Text.Json;
using WholeRecords.Tests.Made;
using Xunit.Abstractions;

namespace WholeRecords.Tests.Properties;

/// <summary>The seven properties asked of the rules of today, and made visits judged by them. Once for all tests; with PROPERTIES=every all that there is to ask.</summary>
public sealed class TodaysProperties
{
    private static readonly TodaysEngine Engine = new();

    internal static bool IsLong { get; } = Environment.GetEnvironmentVariable("PROPERTIES") == "every";

    internal PropertyRun Run { get; } = new(Engine, WholeRecord.All, PropertyRun.AllProperties(IsLong ? RunLength.Every : RunLength.Ordinary));

    internal MadeVisitFigures Visits { get; } = new(Engine);
}

/// <summary>
/// How far the rules of today keep the properties. With REWRITE_TODAY=1 the page is written anew and the numbers lowered to what is found; no automatic run sets it.
/// </summary>
public sealed class PropertyTests(TodaysProperties today, ITestOutputHelper output) : IClassFixture<TodaysProperties>
{
    private static readonly string Page = Path.Combine(WholeRecord.Folder, "PROPERTIES.md");
    private static readonly string Numbers = Path.Combine(WholeRecord.Folder, "properties.json");
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static bool IsRewriting => Environment.GetEnvironmentVariable("REWRITE_TODAY") == "1";

    [Fact]
    public async Task The_committed_page_is_what_was_found()
    {
        var page = PropertiesPage.Of(today.Run, today.Visits);
        if (IsRewriting)
            await File.WriteAllTextAsync(Page, page);

        Assert.True(await File.ReadAllTextAsync(Page) == page, "tests/records/whole/PROPERTIES.md is stale: run tests/rewrite properties and look at the difference.");
    }

    /// <summary>Each number may only fall, and where it is 0 it stays 0. The numbers are those of a plain run.</summary>
    [Fact]
    public async Task No_claim_has_more_counterexamples_than_it_had()
    {
        var held = await HeldAsync();
        var found = today.Run.Claims.Where(claim => today.Run.Asked(claim) > 0).Select(claim => (Name: claim.Id, Number: today.Run.Of(claim).Count())).Concat(today.Visits.Held).ToDictionary();

        Assert.All(found, claim => Assert.True(claim.Value <= held.GetValueOrDefault(claim.Key), $"{claim.Key}: {claim.Value} counterexamples, at most {held.GetValueOrDefault(claim.Key)} are held.\n{Report(claim.Key)}"));
        if (IsRewriting)
            await File.WriteAllTextAsync(Numbers, JsonSerializer.Serialize(found, Indented) + "\n");
        else
            Assert.True(held.Count == found.Count && held.All(claim => found[claim.Key] == claim.Value), "A number has fallen: tests/rewrite properties holds it there.");
    }

    /// <summary>Where a plain run finds nothing, the long one (tests/long/properties) finds nothing either.</summary>
    [Fact]
    public async Task Where_the_rules_are_clean_they_are_clean_at_any_length()
    {
        var held = await HeldAsync();
        foreach (var claim in today.Run.Claims)
            output.WriteLine($"{claim.Id}: {today.Run.Asked(claim)} asked, {today.Run.Of(claim).Count()} found");
        var clean = today.Run.Claims.Where(claim => held.TryGetValue(claim.Id, out var number) && number == 0).ToList();
        Assert.NotEmpty(clean);
        Assert.All(clean, claim => Assert.False(today.Run.Of(claim).Any(), Report(claim.Id)));
    }

    private static async Task<Dictionary<string, int>> HeldAsync() => JsonSerializer.Deserialize<Dictionary<string, int>>(await File.ReadAllTextAsync(Numbers))!;

    private string Report(string claim) =>
        string.Join('\n', today.Run.Found.Where(one => one.Claim.Id == claim).Take(20).Select(one => $"{one.Claim.Id} {one.Kind}: {one.Record} {one.Changes} ({one.Said})"));
}
