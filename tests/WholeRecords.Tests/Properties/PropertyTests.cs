using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using WholeRecords.Tests.Made;
using Xunit.Abstractions;

namespace WholeRecords.Tests.Properties;

/// <summary>The seven properties asked of the rules of today, and made visits judged by them. Once for all tests; with PROPERTIES=every all that there is to ask.</summary>
public sealed class TodaysProperties
{
    private static readonly TodaysEngine Engine = new();

    /// <summary>Visits whose figures stand on the page.</summary>
    internal const int Visited = 1500;

    internal static bool IsLong { get; } = Environment.GetEnvironmentVariable("PROPERTIES") == "every";

    /// <summary>Boilers whose made visits the properties are asked of.</summary>
    internal static int Boilers { get; } = IsLong ? 1000 : 30;

    /// <summary>One whole record in so many is asked about: tests/long/properties may say more.</summary>
    private static readonly int OneIn = int.TryParse(Environment.GetEnvironmentVariable("ONE_RECORD_IN"), CultureInfo.InvariantCulture, out var set) ? set : 1;

    private static readonly RunLength Length = IsLong ? RunLength.Every : RunLength.Ordinary;

    internal PropertyRun Run { get; } = new(Engine, WholeRecord.All.Where((_, index) => index % OneIn == 0).Select(Start.Of), PropertyRun.AllProperties(Length));

    /// <summary>The same over made visits, each with the visits before it, as far as nobody has to say what is expected.</summary>
    internal PropertyRun Made { get; } = new(Engine, MadeStarts.Of(Boilers), PropertyRun.PropertiesOfAnyRecord(Length));

    internal MadeVisitFigures Visits => field ??= new(Engine, Visited);

    /// <summary>Every claim that was asked, by the name under which its number is held.</summary>
    internal IReadOnlyList<(string Name, int Asked, IReadOnlyList<Counterexample> Found)> Claims =>
    [
        .. new[] { (Prefix: "", Run), (Prefix: "visits: ", Run: Made) }.SelectMany(one => one.Run.Claims.Where(claim => one.Run.Asked(claim) > 0)
            .Select(claim => (one.Prefix + claim.Id, one.Run.Asked(claim), (IReadOnlyList<Counterexample>)[.. one.Run.Of(claim)]))),
    ];
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
        var page = PropertiesPage.Of(today.Run, today.Made, today.Visits);
        if (IsRewriting)
            await File.WriteAllTextAsync(Page, page);

        Assert.True(await File.ReadAllTextAsync(Page) == page, "tests/records/whole/PROPERTIES.md is stale: run tests/rewrite properties and look at the difference.");
    }

    /// <summary>Each number may only fall, and where it is 0 it stays 0. The numbers are those of a plain run.</summary>
    [Fact]
    public async Task No_claim_has_more_counterexamples_than_it_had()
    {
        var held = await HeldAsync();
        var found = today.Claims.Select(claim => (claim.Name, Number: claim.Found.Count)).Concat(today.Visits.Held).ToDictionary();

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
        foreach (var (name, asked, found) in today.Claims)
            output.WriteLine($"{name}: {asked} asked, {found.Count} found");
        output.WriteLine($"{today.Run.Bases.Records} whole records and {today.Made.Bases.Records} of made visits");
        var clean = today.Claims.Where(claim => held.TryGetValue(claim.Name, out var number) && number == 0).ToList();
        Assert.NotEmpty(clean);
        Assert.All(clean, claim => Assert.True(claim.Found.Count == 0, Report(claim.Name)));
    }

    private static async Task<Dictionary<string, int>> HeldAsync() => JsonSerializer.Deserialize<Dictionary<string, int>>(await File.ReadAllTextAsync(Numbers))!;

    private string Report(string claim) =>
        string.Join('\n', today.Claims.Where(one => one.Name == claim).SelectMany(one => one.Found).Take(20).Select(one => $"{claim} {one.Kind}: {one.Record} {one.Changes} ({one.Said})"));
}
