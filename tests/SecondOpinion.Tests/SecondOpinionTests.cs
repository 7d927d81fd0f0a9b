using System.Globalization;
using Xunit.Abstractions;

namespace SecondOpinion.Tests;

/// <summary>The rules say what a second, independent reading of the same specification says.</summary>
public sealed class SecondOpinionTests(ITestOutputHelper output)
{
    private const int Records = 20_000;

    /// <summary>How many records, from which number on: a longer run sets these.</summary>
    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var number) ? number : otherwise;

    [Fact]
    public void Rules_and_second_opinion_agree_on_every_generated_record()
    {
        var comparison = new Comparison();
        var first = Setting("SECOND_OPINION_FIRST", 0);
        Parallel.For(first, first + Setting("SECOND_OPINION_RECORDS", Records), number => comparison.Judge(RecordGenerator.Make(number)));

        output.WriteLine($"{comparison.Records} records, {comparison.Answers} answers, {comparison.Disagreements.Count} disagreements");
        Assert.True(comparison.Disagreements.Count == 0, comparison.Report());
    }

    [Fact]
    public void Every_rule_has_a_second_opinion()
    {
        var without = Comparison.RuleIds.Except(OpinionTable.All.Keys).ToList();
        output.WriteLine($"{without.Count} rules without a second opinion: {string.Join(", ", without)}");
    }
}
