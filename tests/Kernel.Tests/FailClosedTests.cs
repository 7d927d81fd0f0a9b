using Findings;
using Kernel.Catalogues;
using Kernel.Engine;
using Kernel.Tests.Misbehaving;
using NRules;
using NRules.Fluent;
using NRules.Fluent.Dsl;
using NRules.RuleModel;
using Rules;
using Visits;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>A rule that fails is never read as a pass, and takes no other rule with it.</summary>
public sealed class FailClosedTests
{
    public static TheoryData<string> Misbehaving => ["throws-in-condition", "throws-on-second", "throws-in-inference", "asks-unknown-limit"];

    public static TheoryData<string> MisbehavingDuties => ["throws-while-called", "throws-while-calling", "throws-while-inferring", "throws-while-chaining"];

    [Theory]
    [MemberData(nameof(Misbehaving))]
    public void A_rule_that_throws_is_an_error_and_leaves_the_others_intact(string ruleId)
    {
        var record = Samples.Changed(json => json["combustion"]!["readings"]![0]!["coPpm"] = 900);
        var engine = Samples.EngineWith(Rule(ruleId));
        var evaluation = engine.Evaluate(record);

        var failed = Assert.Single(evaluation.Findings, finding => finding.RuleId == ruleId);
        Assert.Equal(Outcome.Error, failed.Outcome);
        Assert.Equal(1, evaluation.Counts.Error);
        Assert.Contains(ruleId, evaluation.Closing.BlockedBy);
        Assert.Equal(Answers.Of(Samples.Engine.Evaluate(record)), Answers.Of(evaluation, finding => finding.RuleId != ruleId));
    }

    /// <summary>Where only problems are shown whole, a rule is asked twice; what it says the second time does not make a pass of a problem.</summary>
    [Theory]
    [InlineData("says-two-things")]
    [InlineData("throws-when-asked-again")]
    public void A_rule_that_does_not_stand_by_its_word_is_an_error(string ruleId)
    {
        var evaluation = Samples.EngineWith(ruleId == "says-two-things" ? new SaysTwoThingsRule() : new ThrowsWhenAskedAgainRule()).Evaluate(Samples.Example, detail: Detail.Problems);

        Assert.Equal(Outcome.Error, Assert.Single(evaluation.Findings, finding => finding.RuleId == ruleId).Outcome);
        Assert.Equal((OverallOutcome.Incomplete, false), (evaluation.Outcome, evaluation.Closing.Allowed));
    }

    /// <summary>How much is kept changes nothing of what is said.</summary>
    [Fact]
    public void Problems_are_the_same_however_much_is_kept()
    {
        var record = Samples.Changed(json => json["combustion"]!["readings"]![0]!["coPpm"] = 900);
        var (whole, problems) = (Samples.Engine.Evaluate(record), Samples.Engine.Evaluate(record, detail: Detail.Problems));

        Assert.Equal(whole.ResultHash, problems.ResultHash);
        Assert.Equal(Shown(whole), Shown(problems));

        static string Shown(Evaluation evaluation) =>
            System.Text.Json.JsonSerializer.Serialize(evaluation.Show(Include.Problems), EvaluationJson.Wire.Evaluation);
    }

    [Fact]
    public void A_clean_record_is_incomplete_while_a_rule_throws()
    {
        var evaluation = Samples.EngineWith(Rule("throws-in-condition")).Evaluate(Samples.Example);
        Assert.Equal(OverallOutcome.Incomplete, evaluation.Outcome);
        Assert.False(evaluation.Closing.Allowed);
    }

    /// <summary>Where nobody knows what falls away, nothing does: what a repair is not asked for is asked again, and the record is incomplete.</summary>
    [Theory]
    [MemberData(nameof(MisbehavingDuties))]
    public void Nothing_falls_away_while_a_rule_of_the_duties_throws(string ruleId)
    {
        var rules = Samples.Catalogue.Rules.Concat(Samples.Catalogue.DutyRules).ToList();
        var engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, [.. rules, Duty(ruleId)]));
        var repair = Samples.Changed(json =>
        {
            json["jobType"] = "repair";
            json["heatExchanger"] = new System.Text.Json.Nodes.JsonObject();
            json["work"]!["touched"] = new System.Text.Json.Nodes.JsonArray("waterSide");
            json.AsObject().Remove("condensate");
        });

        Assert.DoesNotContain(Samples.Engine.Evaluate(repair).Missing, item => item.Pointer == "/condensate/runsOutside");
        var evaluation = engine.Evaluate(repair);

        Assert.Contains(evaluation.Missing, item => item.Pointer == "/condensate/runsOutside");
        Assert.Contains(evaluation.Findings, finding => finding.RuleId == ruleId && finding.Outcome == Outcome.Error);
        Assert.Equal((OverallOutcome.Incomplete, false), (evaluation.Outcome, evaluation.Closing.Allowed));
        Assert.Empty(evaluation.NotLookedAt);
    }

    [Fact]
    public void A_rule_of_the_situation_that_throws_closes_nothing()
    {
        var rules = Samples.Catalogue.Rules.Concat<IComplianceRule>(Samples.Catalogue.DutyRules).ToList();
        var engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, [.. rules, new ThrowsInSituationRule()]));

        var evaluation = engine.Evaluate(Samples.Changed(json => json["combustion"]!["readings"]![0]!["coPpm"] = 900));

        Assert.Contains(evaluation.Findings, finding => finding.RuleId == "throws-in-situation" && finding.Outcome == Outcome.Error);
        Assert.Contains("throws-in-situation", evaluation.Closing.BlockedBy);
        Assert.False(evaluation.Closing.Allowed);
    }

    /// <summary>Where the engine reports a failure of which nobody can say whose it is, it may be that of any rule.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_failure_of_which_no_rule_is_known_is_one_of_every_rule(bool isInCondition)
    {
        Dictionary<IRuleDefinition, Rule> rules = [];
        foreach (var rule in new Rule[] { isInCondition ? new NobodysCondition() : new NobodysAction(), new ThrowsInInferenceRule() })
            rules.Add(new RuleDefinitionFactory().Create(rule), rule);
        IComplianceRule[] standing = [new ThrowsWhileCalledRule(), new ThrowsWhileChainingRule()];
        var session = new RuleSession(new RuleCompiler().Compile(rules.Keys).CreateSession(), rules, standing, infers: false);

        var failures = session.Run(["a fact"]);

        Assert.Equal(
            rules.Values.OfType<IComplianceRule>().Concat(standing).Select(rule => rule.Info.Id).Order(StringComparer.Ordinal),
            failures.Keys.Select(rule => rule.Info.Id).Order(StringComparer.Ordinal));
        Assert.All(failures.Values, failure => Assert.Equal("made to throw", failure.Message));
    }

    [Fact]
    public void A_session_in_which_a_rule_threw_taints_no_later_record()
    {
        var engine = Samples.EngineWith(new ThrowsInInferenceRule());
        var clean = engine.Evaluate(Samples.Example);
        _ = engine.Evaluate(Samples.Changed(json => json["combustion"]!["readings"]![0]!["coPpm"] = 900));
        Assert.Equal(Answers.Of(clean), Answers.Of(engine.Evaluate(Samples.Example)));
    }

    private sealed class NobodysCondition : Rule
    {
        public override void Define()
        {
            string fact = default!;
            When().Match(() => fact, text => Throw(text));
            Then().Do(_ => Throw(fact));
        }
    }

    private sealed class NobodysAction : Rule
    {
        public override void Define()
        {
            string fact = default!;
            When().Match(() => fact);
            Then().Do(_ => Throw(fact));
        }
    }

    private static bool Throw(string text) => text.Length == 0 ? true : throw new InvalidOperationException("made to throw");

    private static DutyRule Duty(string id) => id switch
    {
        "throws-while-called" => new ThrowsWhileCalledRule(),
        "throws-while-calling" => new ThrowsWhileCallingRule(),
        "throws-while-inferring" => new ThrowsWhileInferringRule(),
        _ => new ThrowsWhileChainingRule(),
    };

    private static IComplianceRule Rule(string id) => id switch
    {
        "throws-in-condition" => new ThrowsWhileJudgingRule(),
        "throws-on-second" => new ThrowsOnSecondSubjectRule(),
        "throws-in-inference" => new ThrowsInInferenceRule(),
        _ => new AsksForAnUnknownLimitRule(),
    };
}
