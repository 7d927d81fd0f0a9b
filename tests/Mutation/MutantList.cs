using System.Text.Json;

namespace Mutation;

/// <summary>One change of one place, compiled into the assembly and switched off.</summary>
/// <param name="Id">The number that switches it on.</param>
/// <param name="File">The source file, from the folder of the rules.</param>
/// <param name="Line">Line of the change, from 1.</param>
/// <param name="Kind">What is changed.</param>
/// <param name="Before">The line as it is.</param>
/// <param name="After">What stands there in place of it.</param>
internal sealed record Mutant(int Id, string File, int Line, string Kind, string Before, string After);

/// <summary>The mutants of a report in the format of the mutation-testing-report-schema.</summary>
internal static class MutantList
{
    /// <summary>Why Stryker itself has not tried a mutant that it has compiled: nothing was changed since the commit that it was told.</summary>
    private const string OnlyCompiled = "Removed by since filter";

    /// <summary>All that were compiled.</summary>
    public static IEnumerable<Mutant> Read(string path)
    {
        using var report = JsonDocument.Parse(File.ReadAllBytes(path));
        foreach (var file in report.RootElement.GetProperty("files").EnumerateObject())
        {
            var source = file.Value.GetProperty("source").GetString()!.Split('\n');
            foreach (var mutant in file.Value.GetProperty("mutants").EnumerateArray())
            {
                if (mutant.GetProperty("statusReason").GetString() != OnlyCompiled)
                    continue;
                var line = mutant.GetProperty("location").GetProperty("start").GetProperty("line").GetInt32();
                yield return new Mutant(
                    int.Parse(mutant.GetProperty("id").GetString()!, null),
                    file.Name,
                    line,
                    mutant.GetProperty("mutatorName").GetString()!,
                    OneLine(source[line - 1]),
                    OneLine(mutant.GetProperty("replacement").GetString() ?? ""));
            }
        }
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
