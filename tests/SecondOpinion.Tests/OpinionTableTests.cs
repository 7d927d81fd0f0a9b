using SecondOpinion.Opinions;

namespace SecondOpinion.Tests;

/// <summary>The second opinion is asked of every rule. Needs no record, so that whoever adds a rule knows in seconds.</summary>
public sealed class OpinionTableTests
{
    [Fact]
    public void Every_rule_has_a_second_opinion_and_every_opinion_a_rule()
    {
        Assert.NotEmpty(OpinionTable.All);
        var alone = Comparison.RuleIds.Except(OpinionTable.All.Keys, StringComparer.Ordinal).ToList();
        Assert.True(alone.Count == 0, $"{string.Join(", ", alone)}: no second opinion. Somebody who has not read the rule writes it: src/SecondOpinion/README.md.");
        var idle = OpinionTable.All.Keys.Except(Comparison.RuleIds, StringComparer.Ordinal).ToList();
        Assert.True(idle.Count == 0, $"{string.Join(", ", idle)}: an opinion in src/SecondOpinion/Opinions without a rule.");
    }
}
