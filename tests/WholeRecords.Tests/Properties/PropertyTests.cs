using System.Text.Json;
using Xunit.Abstractions;

namespace WholeRecords.Tests.Properties;

/// <summary>The seven properties asked of the rules of today. Once for all tests; with ESCAPES=every only the escapes, all of them.</summary>
public sealed class TodaysProperties
{
    internal PropertyRun Run { get; } = IsLong
        ? new(new TodaysEngine(), WholeRecord.All, new EscapeProperty(EscapeLength.Every))
        : new(new TodaysEngine(), WholeRecord.All, PropertyRun.AllProperties(EscapeLength.Ordinary));

    internal static bool IsLong { get; } = Environment.GetEnvironmentVariable("ESCAPES") == "every";
}

/// <summary>
/// How far the rules of today keep the properties. With REWRITE_TODAY=1 the page is written anew and the numbers lowered to what is found; no automatic run sets it.
/// </summary>
public sealed class PropertyTests(TodaysProperties today, ITestOutputHelper output) : IClassFixture<TodaysProperties>
{
    private static readonly string Page = Path.Combine(WholeRecord.Folder, "PROPERTIES.md");
    private static readonly string Numbers = Path.Combine(WholeRecord.Folder, "properties.json");
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n" };

    private static bool IsRewriting => Environment.GetEnvironmentVariable("REWRITE_TODAY") == "1";

    [Fact]
    public async Task The_committed_page_is_what_was_found()
    {
        var page = PropertiesPage.Of(today.Run);
        if (IsRewriting)
            await File.WriteAllTextAsync(Page, page);

        Assert.True(await File.ReadAllTextAsync(Page) == page, "tests/records/whole/PROPERTIES.md is stale: run tests/rewrite and look at the difference.");
    }

    /// <summary>Each number may only fall, and where it is 0 it stays 0.</summary>
    [Fact]
    public async Task No_claim_has_more_counterexamples_than_it_had()
    {
        var run = today.Run;
        var held = File.Exists(Numbers) ? JsonSerializer.Deserialize<Dictionary<string, int>>(await File.ReadAllTextAsync(Numbers))! : [];
        var found = run.Claims.Where(claim => run.Asked(claim) > 0).ToDictionary(claim => claim.Id, claim => run.Of(claim).Count());

        Assert.All(found, claim => Assert.True(claim.Value <= held.GetValueOrDefault(claim.Key), Report(claim.Key)));
        if (IsRewriting)
            await File.WriteAllTextAsync(Numbers, JsonSerializer.Serialize(found, Indented) + "\n");
        else
            Assert.True(held.Count == found.Count && held.All(claim => found[claim.Key] == claim.Value), "A number has fallen: tests/rewrite holds it there.");
    }

    /// <summary>Where no escape is known, none is found the long way either (tests/long/escapes); in a plain run the same of the ordinary length.</summary>
    [Fact]
    public async Task No_escape_is_found_where_none_is_known()
    {
        var held = JsonSerializer.Deserialize<Dictionary<string, int>>(await File.ReadAllTextAsync(Numbers))!;
        var escapes = today.Run.Claims.Where(claim => claim.Id.StartsWith('7') && held.GetValueOrDefault(claim.Id) == 0).ToList();
        foreach (var claim in today.Run.Claims)
            output.WriteLine($"{claim.Id}: {today.Run.Asked(claim)} asked, {today.Run.Of(claim).Count()} found");
        Assert.NotEmpty(escapes);
        Assert.All(escapes, claim => Assert.False(today.Run.Of(claim).Any(), Report(claim.Id)));
    }

    private string Report(string claim) =>
        string.Join('\n', today.Run.Found.Where(one => one.Claim.Id == claim).Take(20).Select(one => $"{one.Claim.Id} {one.Kind}: {one.Record} {one.Changes} ({one.Said})"));
}
