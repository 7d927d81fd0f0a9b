using Clients.Tests;
namespace Readme.Tests;

/// <summary>The commands of README.md by the kind that their fence names.</summary>
internal static class ReadmeText
{
    /// <summary>The fences in their order: what stands behind the three marks, and the lines.</summary>
    public static IReadOnlyList<(string Kind, string[] Lines)> Fences { get; } = [.. Read(File.ReadAllLines(Path.Combine(Shell.Repository, "README.md")))];

    /// <summary>The lines of the only fence of a kind.</summary>
    public static string[] Of(string kind) => Fences.Single(fence => fence.Kind == kind).Lines;

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
