using SecondOpinion.Opinions;

namespace SecondOpinion.Tests;

/// <summary>The second opinion is asked of every rule. Needs no record, so that whoever adds a rule knows in seconds.</summary>
public sealed class OpinionTableTests
{
    /// <summary>Rules that still wait for somebody who has not read them. The list is to be empty; nothing compares what stands in it.</summary>
    private static readonly string[] Awaited = ["co-alarm-cause"];

    [Fact]
    public void Every_rule_has_a_second_opinion_and_every_opinion_a_rule()
    {
        Assert.NotEmpty(OpinionTable.All);
        var alone = Comparison.RuleIds.Except(OpinionTable.All.Keys, StringComparer.Ordinal).ToList();
        var unasked = alone.Except(Awaited, StringComparer.Ordinal).ToList();
        Assert.True(unasked.Count == 0, $"{string.Join(", ", unasked)}: no second opinion. Somebody who has not read the rule writes it: src/SecondOpinion/README.md.");
        Assert.Equal([], Awaited.Except(alone, StringComparer.Ordinal));
        var idle = OpinionTable.All.Keys.Except(Comparison.RuleIds, StringComparer.Ordinal).ToList();
        Assert.True(idle.Count == 0, $"{string.Join(", ", idle)}: an opinion in src/SecondOpinion/Opinions without a rule.");
    }
}
