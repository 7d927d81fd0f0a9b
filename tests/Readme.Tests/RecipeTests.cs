using Clients.Tests;
namespace Readme.Tests;

/// <summary>The recipe for a rule, by somebody who copies what rules/EXAMPLE.md shows and types what rules/README.md names.</summary>
public sealed class RecipeTests(FreshClone clone) : IClassFixture<FreshClone>
{
    [Fact]
    public async Task What_the_page_shows_is_a_rule_and_a_case_that_fails_says_what_the_rule_says()
    {
        var fences = ReadmeText.FencesOf("rules/EXAMPLE.md");
        Assert.Equal(["csharp", "json", "json", "csharp", "json"], fences.Select(fence => fence.Kind));
        var shown = fences.Select(fence => string.Join('\n', fence.Lines) + "\n").ToList();
        const string Ids = """

                public const string FlameCurrent = "flame-current";
                public const string CondensateInsulated = "condensate-insulated";

            """;

        Change("RuleIds.cs", ids => BeforeItsEnd(ids, Ids));
        Change("limits.json", lines => "[\n" + shown[2] + lines[(lines.IndexOf('\n', StringComparison.Ordinal) + 1)..]);
        Change("Condensate/Statements.cs", rows => BeforeItsEnd(rows, "\n" + shown[3]));
        File.WriteAllText(Rules("Burner/FlameCurrentRule.cs"), shown[0]);
        File.WriteAllText(Rules("Burner/FlameCurrentRule.cases.json"), shown[1]);
        File.WriteAllText(Rules("Condensate/CondensateInsulated.cases.json"), shown[4]);
        Assert.Contains("Passed!", await Shell.Run(clone.Folder, "tests/topic Burner"), StringComparison.Ordinal);
        Assert.Contains("Passed!", await Shell.Run(clone.Folder, "tests/topic Condensate"), StringComparison.Ordinal);

        const string OnTheLimit = "\"outcome\": \"pass\", \"margin\": 0 ";
        Assert.Contains(OnTheLimit, shown[1], StringComparison.Ordinal);
        File.WriteAllText(Rules("Burner/FlameCurrentRule.cases.json"), shown[1].Replace(OnTheLimit, "\"outcome\": \"advisory\" ", StringComparison.Ordinal));
        Assert.Contains(
            "flame-current, \"exactly 1 uA\": the case expects advisory, the rule says pass: the flame current is 1 µA, at least 1",
            await Shell.Run(clone.Folder, "tests/topic Burner || true"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_command_that_is_typed_wrongly_says_how_it_is_typed()
    {
        Assert.Contains("There is no folder rules/Watre with rules in it. One of: AmbientAir ", await Shell.Run(clone.Folder, "tests/topic Watre 2>&1 || true"), StringComparison.Ordinal);
        Assert.StartsWith("Usage: tests/topic TOPIC", await Shell.Run(clone.Folder, "tests/topic 2>&1 || true"), StringComparison.Ordinal);
        Assert.StartsWith("Usage: tests/rewrite ", await Shell.Run(clone.Folder, "tests/rewrite propertys 2>&1 || true"), StringComparison.Ordinal);
    }

    private string Rules(string file) => Path.Combine(clone.Folder, "rules", file);

    private void Change(string file, Func<string, string> change) => File.WriteAllText(Rules(file), change(File.ReadAllText(Rules(file))));

    private static string BeforeItsEnd(string source, string added) => source.Insert(source.LastIndexOf('}'), added);
}
