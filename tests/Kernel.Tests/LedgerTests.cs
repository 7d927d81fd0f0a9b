using Kernel.Catalogues;
using Kernel.Tests.Misbehaving;
using Rules;
using Visits;

namespace Kernel.Tests;

/// <summary>What references.json claims and what the rules cite is the same.</summary>
public sealed class LedgerTests
{
    [Fact]
    public void The_shipped_ledger_and_the_rules_agree() => Assert.Empty(LedgerCheck.Faults(Samples.Catalogue));

    [Fact]
    public void A_claim_that_no_rule_makes_good_is_refused()
    {
        var without = Samples.Catalogue.With([.. Samples.Catalogue.Rules.Where(rule => rule.Info.Id != RuleIds.CombustionRatio)]);
        Assert.Equal(
            [
                "references.json says that combustion-ratio rests on GSIUR-1998 26(9)(ca), and the rule does not cite it",
                "references.json says that combustion-ratio rests on BS-7967 12, and the rule does not cite it",
            ],
            LedgerCheck.Faults(without));
    }

    [Fact]
    public void A_citation_that_the_ledger_does_not_list_is_refused()
    {
        var with = RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, [.. Samples.Catalogue.Rules, new ThrowsWhileJudgingRule()]);
        Assert.Equal("the rule says that throws-in-condition rests on COMMON-PRACTICE, and references.json does not list it", Assert.Single(LedgerCheck.Faults(with)));
    }
}
