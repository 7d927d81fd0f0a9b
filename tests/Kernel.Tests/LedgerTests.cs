using Kernel.Catalogues;
using Kernel.Tests.Misbehaving;
using Rules;
using Visits;

namespace Kernel.Tests;

/// <summary>What the rules cite has a subject in references.json, and what it says that rules cover is covered.</summary>
public sealed class LedgerTests
{
    [Fact]
    public void The_shipped_ledger_and_the_rules_agree() => Assert.Empty(Ledger.Faults(Samples.Catalogue));

    [Fact]
    public void A_clause_that_no_rule_cites_and_that_says_no_reason_is_refused()
    {
        var without = Samples.Catalogue.With([.. Samples.Catalogue.Rules.Where(rule => rule.Info.Id != RuleIds.AlteredSinceLastVisit)]);
        Assert.Equal(
            "no rule cites GSIUR-1998 8 'alterations that make an installation dangerous', and references.json does not say why none can or none does yet",
            Assert.Single(Ledger.Faults(without)));
    }

    [Fact]
    public void A_clause_that_is_cited_and_has_no_subject_is_refused()
    {
        var with = RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, [.. Samples.Catalogue.Rules, new CitesWhatNobodyListedRule()]);
        Assert.Equal("cites-what-nobody-listed cites GSIUR-1998 99(9), and references.json does not give that clause a subject", Assert.Single(Ledger.Faults(with)));
    }

    [Fact]
    public void Rules_of_common_practice_stand_together_by_topic()
    {
        var practice = Samples.Catalogue.References.Find(Ledger.CommonPractice)!;
        Assert.Equal(
            Samples.Catalogue.Rules.Where(rule => rule.Info.IsCommonPractice).Select(rule => rule.Info.Id).Order(StringComparer.Ordinal),
            practice.Clauses.SelectMany(entry => entry.Rules ?? []).Order(StringComparer.Ordinal));
        Assert.Contains(practice.Clauses, entry => entry.Subject == "gas pressure" && entry.Rules!.Contains(RuleIds.MeterStandingPressure));
    }
}
