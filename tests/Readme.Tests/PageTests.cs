using System.Globalization;
using System.Text.RegularExpressions;
using Clients.Tests;

namespace Readme.Tests;

/// <summary>What the pages of the repository point to is there, and none is longer than it may be.</summary>
public sealed partial class PageTests
{
    private const long LongestReadme = 8192;
    private const long LongestIndex = 4096;

    public static TheoryData<string> Pages => [.. Markdown.Pages];

    /// <summary>Every project of the product and every room of the host, and what is no project but has things to add to.</summary>
    public static TheoryData<string> Rooms =>
    [
        .. Markdown.Files.Where(file => file.EndsWith(".csproj", StringComparison.Ordinal) && !file.StartsWith("tests/", StringComparison.Ordinal)).Select(file => file[..file.LastIndexOf('/')]),
        .. new[] { "Api", "Commands", "Guard", "Operations", "Pages" }.Select(room => $"src/ComplianceApi/{room}"),
        "openapi", "tests", "tests/long",
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_leads_somewhere(string page) => Assert.All(Markdown.Links(page), link =>
    {
        var (path, anchor) = link.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? (link[..at], link[(at + 1)..]) : (link, null);
        var target = path.Length == 0 ? page : From(page, path);
        Assert.True(Markdown.Files.Contains(target) || Markdown.Folders.Contains(target), $"There is no {target}.");
        if (anchor is not null)
            Assert.Contains(anchor, Markdown.Anchors(target));
    });

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_file_and_test_that_is_named_exists(string page) => Assert.All(Markdown.Names(page), name =>
    {
        if (InRepository.IsMatch(name))
            Assert.True(Markdown.Files.Contains(name) || Markdown.Folders.Contains(name.TrimEnd('/')), $"There is no {name}.");
        else if (FileName.IsMatch(name))
            Assert.True(Markdown.Files.Any(file => file == name || file.EndsWith($"/{name}", StringComparison.Ordinal)), $"No file is called {name}.");
        else if (TestName.Match(name) is { Success: true } test)
            Assert.True(SourcesOf(test.Groups["class"].Value).Any(source => source.Contains($" {test.Groups["method"].Value}(", StringComparison.Ordinal) || !test.Groups["method"].Success), $"There is no test {name}.");
    });

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_has_a_short_readme(string room)
    {
        Assert.Contains($"{room}/README.md", Markdown.Files);
        Assert.InRange(Markdown.SizeOf($"{room}/README.md"), 1, LongestReadme);
    }

    [Fact]
    public void The_readme_and_the_index_of_developers_are_short()
    {
        Assert.InRange(Markdown.SizeOf("README.md"), 1, LongestReadme);
        Assert.InRange(Markdown.SizeOf("DEVELOPERS.md"), 1, LongestIndex);
    }

    /// <summary>The index has one line a room.</summary>
    [Theory]
    [MemberData(nameof(Rooms))]
    public void The_index_leads_to_every_room(string room) => Assert.Contains($"{room}/README.md", Markdown.Links("DEVELOPERS.md"));

    [Fact]
    public void A_decision_is_named_by_its_day_and_says_it()
    {
        var decisions = Markdown.Pages.Where(page => page.Contains("/decisions/", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(decisions);
        Assert.All(decisions, page =>
        {
            var name = page[(page.LastIndexOf('/') + 1)..];
            Assert.True(DateOnly.TryParseExact(name[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _), page);
            Assert.Contains($"Decided {name[..10]}.", File.ReadAllLines(Path.Combine(Shell.Repository, page)));
        });
    }

    private static string From(string page, string path) =>
        Path.GetRelativePath(Shell.Repository, Path.GetFullPath(Path.Combine(Shell.Repository, Path.GetDirectoryName(page)!, path))).Replace('\\', '/');

    private static IEnumerable<string> SourcesOf(string testClass) => Markdown.Files
        .Where(file => file.StartsWith("tests/", StringComparison.Ordinal) && file.EndsWith($"/{testClass}.cs", StringComparison.Ordinal))
        .Select(file => File.ReadAllText(Path.Combine(Shell.Repository, file)));

    [GeneratedRegex(@"^(src|rules|tests|openapi|\.ci)/[\w./-]+$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex InRepository { get; }

    [GeneratedRegex(@"^[\w./-]+\.(cs|md|json|razor|sql|mjs|js|yaml|css|props|csproj|http)$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FileName { get; }

    [GeneratedRegex(@"^(?<class>[A-Za-z]+Tests)(\.(?<method>\w+))?$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex TestName { get; }
}
