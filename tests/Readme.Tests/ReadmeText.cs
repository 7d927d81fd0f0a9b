using Clients.Tests;
namespace Readme.Tests;

/// <summary>The commands of the typed pages by the kind that their fence names: README.md, then what it leads to.</summary>
internal static class ReadmeText
{
    /// <summary>The pages in the order in which they are typed. Making a key comes last: from then on the service asks for one.</summary>
    public static IReadOnlyList<string> Pages { get; } = ["README.md", "src/ComplianceApi/Operations/README.md"];

    /// <summary>The kinds of fences that are typed.</summary>
    public static IReadOnlyList<string> Typed { get; } = ["sh run", "sh service", "sh instances", "sh tests"];

    /// <summary>The fences of the typed pages in their order: what stands behind the three marks, and the lines.</summary>
    public static IReadOnlyList<(string Kind, string[] Lines)> Fences { get; } = [.. Pages.SelectMany(FencesOf)];

    /// <summary>The lines of the only fence of a kind.</summary>
    public static string[] Of(string kind) => Fences.Single(fence => fence.Kind == kind).Lines;

    /// <summary>The fences of a page, by its path in the repository.</summary>
    public static IReadOnlyList<(string Kind, string[] Lines)> FencesOf(string page) => [.. Read(File.ReadAllLines(Path.Combine(Shell.Repository, page)))];

    private static IEnumerable<(string Kind, string[] Lines)> Read(string[] text)
    {
        for (var line = 0; line < text.Length; line++)
        {
            if (!text[line].StartsWith("```", StringComparison.Ordinal))
                continue;
            var end = Array.IndexOf(text, "```", line + 1);
            yield return (text[line][3..], text[(line + 1)..end]);
            line = end;
        }
    }
}
