using System.Text.RegularExpressions;
using Clients.Tests;

namespace Readme.Tests;

/// <summary>The files of the repository, and what its pages say outside of fences.</summary>
internal static partial class Markdown
{
    /// <summary>Every file that git knows or would add, by its path in the repository.</summary>
    public static IReadOnlySet<string> Files { get; } = Shell.Run(Shell.Repository, "git ls-files --cached --others --exclude-standard").GetAwaiter().GetResult()
        .Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(file => File.Exists(Path.Combine(Shell.Repository, file))).ToHashSet(StringComparer.Ordinal);

    /// <summary>Every folder with a file in it or below it.</summary>
    public static IReadOnlySet<string> Folders { get; } = Files.SelectMany(Above).ToHashSet(StringComparer.Ordinal);

    /// <summary>Every page.</summary>
    public static IEnumerable<string> Pages => Files.Where(file => file.EndsWith(".md", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <summary>Size of a file in bytes.</summary>
    public static long SizeOf(string file) => new FileInfo(Path.Combine(Shell.Repository, file)).Length;

    /// <summary>Targets of the links of a page that stay in the repository, as they are written.</summary>
    public static IEnumerable<string> Links(string page) => Link.Matches(Prose(page)).Select(match => match.Groups["target"].Value).Where(target => !target.Contains("://", StringComparison.Ordinal));

    /// <summary>What stands between single backticks on a page.</summary>
    public static IEnumerable<string> Names(string page) => Name.Matches(Prose(page)).Select(match => match.Groups["name"].Value);

    /// <summary>The anchors of a page's headings, as GitHub makes them.</summary>
    public static IEnumerable<string> Anchors(string page) => Heading.Matches(Prose(page))
        .Select(match => NotInAnchors.Replace(match.Groups["text"].Value.Trim().ToLowerInvariant(), "").Replace(' ', '-'));

    private static string Prose(string page) => Fence.Replace(Text(page), "");

    private static string Text(string page) => File.ReadAllText(Path.Combine(Shell.Repository, page));

    private static IEnumerable<string> Above(string file)
    {
        for (var slash = file.LastIndexOf('/'); slash > 0; slash = file.LastIndexOf('/', slash - 1))
            yield return file[..slash];
    }

    [GeneratedRegex("^```.*?^```$", RegexOptions.Multiline | RegexOptions.Singleline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Fence { get; }

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Link { get; }

    [GeneratedRegex("`(?<name>[^`\n]+)`", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Name { get; }

    [GeneratedRegex("^#+ (?<text>.*)$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Heading { get; }

    [GeneratedRegex(@"[^\w\- ]", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NotInAnchors { get; }
}
