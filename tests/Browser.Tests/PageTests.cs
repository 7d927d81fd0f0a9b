using System.Text.RegularExpressions;

namespace Browser.Tests;

/// <summary>The pages in a browser: each test of the *.test.mjs files, by its name.</summary>
public sealed partial class PageTests(BrowserRun run) : IClassFixture<BrowserRun>
{
    public static TheoryData<string> Names => [.. Directory.GetFiles(BrowserRun.Sources, "*.test.mjs").Order(StringComparer.Ordinal)
        .SelectMany(file => Test().Matches(File.ReadAllText(file))).Select(match => match.Groups["name"].Value)];

    [Theory]
    [MemberData(nameof(Names))]
    public void In_the_browser(string name)
    {
        Assert.True(run.Results.TryGetValue(name, out var fault), $"It was not run.\n{run.Said}");
        Assert.True(fault is null, fault);
    }

    [GeneratedRegex(@"^test\('(?<name>[^']+)'", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Test();
}
