using System.Globalization;
using System.Text.RegularExpressions;

namespace Rules.Tests;

/// <summary>
/// The written catalogue is the one that the rules make, and no rule comes or goes without a line in the change log. With
/// REWRITE_CATALOGUE=1 the catalogue is written anew; no automatic run sets it.
/// </summary>
public sealed partial class CataloguePageTests
{
    [Fact]
    public void The_committed_catalogue_is_that_of_the_rules()
    {
        var page = CataloguePage.Of(RuleSet.Catalogue);
        if (Environment.GetEnvironmentVariable("REWRITE_CATALOGUE") == "1")
            File.WriteAllText(Source("CATALOGUE.md"), page);

        Assert.True(File.ReadAllText(Source("CATALOGUE.md")) == page, "rules/CATALOGUE.md is stale: run tests/rewrite and look at the difference.");
    }

    [Fact]
    public void Every_rule_was_added_once_and_every_rule_that_is_gone_was_removed_by_the_change_log()
    {
        var (added, removed) = (Ids("added"), Ids("removed"));
        Assert.Equal(added.Count, added.Distinct(StringComparer.Ordinal).Count());
        Assert.Empty(removed.Except(added, StringComparer.Ordinal));
        Assert.Equal(RuleSet.Catalogue.All.Select(rule => rule.Info.Id), added.Except(removed, StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_line_of_the_change_log_says_what_happened_to_which_rule_and_why()
    {
        var entries = File.ReadAllLines(Source("CHANGELOG.md")).Where(line => line.StartsWith("- ", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(entries);
        Assert.All(entries, line => Assert.Matches(Entry(), line));
        var dates = File.ReadAllLines(Source("CHANGELOG.md")).Where(line => line.StartsWith("## ", StringComparison.Ordinal)).Select(line => line[3..]).ToList();
        Assert.All(dates, date => Assert.True(DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _), date));
        Assert.Equal(dates.OrderDescending(StringComparer.Ordinal), dates);
        Assert.Equal(RuleSet.Catalogue.Header.CountsFrom.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), dates[0]);
    }

    private static List<string> Ids(string what) =>
    [
        .. File.ReadAllLines(Source("CHANGELOG.md")).Select(line => Entry().Match(line)).Where(entry => entry.Groups["what"].Value == what)
            .SelectMany(entry => entry.Groups["id"].Captures.Select(id => id.Value)),
    ];

    private static string Source(string name) => Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", "..", "rules", name);

    [GeneratedRegex("^- (?<what>added|tightened|loosened|removed) (?:`(?<id>[a-z0-9-]+)`(?:, )?)+: .{10,}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Entry();
}
