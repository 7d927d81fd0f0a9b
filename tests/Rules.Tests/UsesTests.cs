using Rules.Law;

namespace Rules.Tests;

/// <summary>What a rule names in [Uses] is what its code can read, no more and no less.</summary>
public sealed class UsesTests
{
    public static TheoryData<string> Ids => [.. RuleSet.Catalogue.Rules.Select(rule => rule.Info.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_rule_names_the_limits_that_it_reads(string ruleId)
    {
        var rule = RuleSet.RuleOf(ruleId);
        Assert.Equal(Reads.Of(rule).Order(StringComparer.Ordinal), rule.Info.Uses.Order(StringComparer.Ordinal));
    }

    // How sure a plain pass must be is asked of every rule alike.
    private static LimitReads Reads => field ??= new(RuleSet.Catalogue.Limits.Definitions.Select(line => line.Id)
        .Concat(RuleSet.Catalogue.Limits.DeployersTables).Except([new VisitLaw().ConformityGuard]));
}
