using System.Text.Json;
using Findings;

namespace Rules.Tests;

/// <summary>
/// Invented records named by what is the matter with them, each with what must be said of it beside it. With REWRITE_EXPECTED=1 the
/// expected answers are written anew, to be read before they are committed; no automatic run sets it.
/// </summary>
public sealed class CorpusTests
{
    /// <summary>Where the records were written, not their copies beside the program: what was just written anew is compared as it is.</summary>
    private static readonly string Folder = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", "records"));

    private static readonly string[] Kinds = ["advisory", "good", "incomplete", "unsafe"];

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static TheoryData<string> Records
    {
        get
        {
            var names = new TheoryData<string>();
            foreach (var file in Kinds.SelectMany(kind => Directory.EnumerateFiles(Path.Combine(Folder, kind), "*.json")).Order(StringComparer.Ordinal))
            {
                if (!file.EndsWith(".expected.json", StringComparison.Ordinal))
                    names.Add(Path.GetRelativePath(Folder, file));
            }

            return names;
        }
    }

    [Theory]
    [MemberData(nameof(Records))]
    public void Record_comes_out_as_its_folder_says_with_the_findings_beside_it(string name)
    {
        var evaluation = RuleSet.Engine.Evaluate(RuleSet.Read(File.ReadAllBytes(Path.Combine(Folder, name))));
        var said = evaluation.Findings
            .Where(finding => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable))
            .Select(finding => new Said(finding.RuleId, finding.Subject, finding.Outcome, finding.Message))
            .ToList();

        if (Environment.GetEnvironmentVariable("REWRITE_EXPECTED") == "1")
            File.WriteAllText(Expected(Path.Combine(Folder, name)), JsonSerializer.Serialize(said, Json) + "\n");

        Assert.Equal(Path.GetDirectoryName(name), evaluation.Outcome switch
        {
            OverallOutcome.Unsafe => "unsafe",
            OverallOutcome.Incomplete => "incomplete",
            OverallOutcome.Advisory => "advisory",
            _ => "good",
        });
        Assert.Equal(JsonSerializer.Deserialize<List<Said>>(File.ReadAllText(Expected(Path.Combine(Folder, name))), Json), said);
    }

    private static string Expected(string record) => Path.ChangeExtension(record, ".expected.json");

    private sealed record Said(string RuleId, string Subject, Outcome Outcome, string? Message);
}
