using System.Text.RegularExpressions;
using Api.Tests.Contract;

namespace Api.Tests.Operations;

/// <summary>The table of what OWASP asks, in the README of Guard, names tests that there are.</summary>
public sealed partial class NamedTestsTests
{
    [Fact]
    public void Every_test_that_the_table_names_exists()
    {
        var sources = Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories)
            .ToLookup(file => Path.GetFileNameWithoutExtension(file), File.ReadAllText, StringComparer.Ordinal);
        var named = Named.Matches(File.ReadAllText(Path.Combine(Repository.Root, "src", "ComplianceApi", "Guard", "README.md"))).Select(match => (Class: match.Groups["class"].Value, Method: match.Groups["method"].Value)).Distinct().ToList();

        Assert.True(named.Count > 25);
        Assert.All(named, test => Assert.True(sources[test.Class].Any(source => Regex.IsMatch(source, $@"\b{test.Method}\(", RegexOptions.None, TimeSpan.FromSeconds(1))), $"{test.Class}.{test.Method}"));
    }

    [GeneratedRegex(@"`(?<class>[A-Za-z]+Tests)\.(?<method>[A-Za-z0-9_]+)`", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Named { get; }
}
