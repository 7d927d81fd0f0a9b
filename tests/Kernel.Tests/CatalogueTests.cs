using Kernel.Catalogues;
using Kernel.Tests.Misbehaving;
using Rules;
using Rules.Combustion;
using Visits;

namespace Kernel.Tests;

/// <summary>The service refuses to start on a rule set with a gap.</summary>
public sealed class CatalogueTests
{
    [Fact]
    public void Refuses_an_empty_rule_set() => Refuses("holds no rule");

    [Fact]
    public void Refuses_two_rules_with_one_id() =>
        Refuses("belongs to CombustionRatioRule and CombustionRatioRule", new CombustionRatioRule(), new CombustionRatioRule());

    [Fact]
    public void Refuses_a_rule_without_metadata()
    {
        var gaps = Refuses("has no id", new RuleWithoutMetadata());
        Assert.Contains(gaps, gap => gap.Contains("has no title", StringComparison.Ordinal));
        Assert.Contains(gaps, gap => gap.Contains("cites nothing", StringComparison.Ordinal));
        Assert.Contains(gaps, gap => gap.Contains("has no cases", StringComparison.Ordinal));
        Assert.Contains(gaps, gap => gap.Contains("does not say how far it covers", StringComparison.Ordinal));
    }

    [Fact]
    public void Refuses_an_unknown_topic() => Refuses("has no known topic ('gossip')", new UnknownTopicRule());

    [Fact]
    public void Refuses_a_rule_that_the_scan_would_skip_in_silence() =>
        Assert.Throws<CatalogueException>(() => CatalogueCheck.InstantiateRules([typeof(HiddenRule)]));

    [Fact]
    public void Refuses_a_part_of_a_duty_that_nobody_named() => Refuses("'nowhere/part' is no part of a duty that duties.json names", new CallsForWhatNobodyNamedRule());

    [Fact]
    public void Refuses_a_rule_of_a_kind_that_the_engine_does_not_ask()
    {
        var refusal = Assert.Throws<CatalogueException>(() => CatalogueCheck.InstantiateRules([typeof(OfNoKindRule)]));
        Assert.Equal("Kernel.Tests.Misbehaving.OfNoKindRule is a rule of no kind that the engine asks", Assert.Single(refusal.Gaps));
    }

    [Fact]
    public void Every_id_belongs_to_one_rule_and_every_rule_to_one_id()
    {
        var ids = typeof(RuleIds).GetFields().Select(field => (string)field.GetRawConstantValue()!).Order(StringComparer.Ordinal);
        Assert.Equal(ids, Samples.Catalogue.Rules.Select(rule => rule.Info.Id));
    }

    [Fact]
    public void Every_limit_has_a_name_and_every_name_a_limit()
    {
        var names = typeof(LimitIds).GetFields().Concat(typeof(DeployersTables).GetFields()).Select(field => (string)field.GetRawConstantValue()!).Order(StringComparer.Ordinal);
        Assert.Equal(names, Samples.Catalogue.Limits.Definitions.Select(limit => limit.Id).Concat(Samples.Catalogue.Limits.DeployersTables).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Hashes_are_the_same_for_the_same_rules_and_others_for_others()
    {
        var again = RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly).Info;
        var other = RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, [.. Samples.Catalogue.Rules, new ThrowsWhileJudgingRule()]).Info;
        Assert.Equal((Samples.Catalogue.Info.LawHash, Samples.Catalogue.Info.CodeHash), (again.LawHash, again.CodeHash));
        Assert.NotEqual(Samples.Catalogue.Info.LawHash, other.LawHash);
        Assert.NotEqual(Samples.Catalogue.Info.CodeHash, other.CodeHash);
    }

    private static IReadOnlyList<string> Refuses(string because, params IComplianceRule[] rules)
    {
        var refusal = Assert.Throws<CatalogueException>(() => RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, rules));
        Assert.Contains(refusal.Gaps, gap => gap.Contains(because, StringComparison.Ordinal));
        return refusal.Gaps;
    }

    private sealed class HiddenRule : VisitRule
    {
        protected override Verdict Assess(Visit visit, Look look) => look.Pass($"never asked");
    }
}
