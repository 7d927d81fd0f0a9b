using System.Text.Json;
using Findings;
using Kernel;
using Visits.Judging;

namespace Rules.Tests;

/// <summary>Every case beside every rule.</summary>
public sealed class CasesTests
{
    public static TheoryData<string, string> Alone => NamesOf(rule => rule is not InferenceRule);

    public static TheoryData<string, string> Inferred => NamesOf(rule => rule is InferenceRule);

    [Theory]
    [MemberData(nameof(Alone))]
    public void Rule_says_what_its_case_expects(string ruleId, string name) => Demand(ruleId, name);

    [Theory]
    [MemberData(nameof(Inferred))]
    public void Inference_says_what_its_case_expects(string ruleId, string name) => Demand(ruleId, name);

    [Fact]
    public void No_two_cases_of_a_rule_share_a_name() => Assert.All(
        RuleSet.Catalogue.Cases, entry => Assert.Equal(entry.Value.Count, entry.Value.Select(one => one.Name).Distinct().Count()));

    private static TheoryData<string, string> NamesOf(Func<IComplianceRule, bool> chosen)
    {
        var data = new TheoryData<string, string>();
        foreach (var (rule, one) in RuleSet.Cases.Where(pair => chosen(pair.Rule)))
            data.Add(rule.Info.Id, one.Name);
        return data;
    }

    private static string Word(Outcome outcome) => JsonNamingPolicy.CamelCase.ConvertName(outcome.ToString());

    private static string Hint(Outcome expected) => expected == Outcome.NotApplicable
        ? " (a case asks the rule alone, without what the visit owes: it is not applicable where its Applies says false, or on another day or place than it is in force)"
        : "";

    private static void Demand(string ruleId, string name)
    {
        var rule = RuleSet.RuleOf(ruleId);
        var one = RuleSet.Catalogue.Cases[rule].Single(candidate => candidate.Name == name);
        var evaluation = RuleSet.EngineOf(rule).Evaluate(RuleSet.RecordOf(one), one.Beside());
        var answer = RuleSet.AnswerTo(one.Expect, RuleSet.AnswersOf(ruleId, evaluation));

        Assert.True(one.Expect.Outcome == answer.Outcome, $"{ruleId}, \"{name}\": the case expects {Word(one.Expect.Outcome)}, the rule says {Word(answer.Outcome)}: {answer.Message}{Hint(one.Expect.Outcome)}");
        if (one.Expect.ExpectedClass is { } expectedClass)
            Assert.Equal(expectedClass, answer.ExpectedClass);
        if (one.Expect.Margin is { } margin)
            Assert.Equal(margin, answer.Margin);
        if (one.Expect.Says is { } words)
            Assert.Contains(words, answer.Message, StringComparison.Ordinal);
        if (one.Expect.Advises is { } advice)
            Assert.Contains(advice, answer.Remedy, StringComparison.Ordinal);
        Assert.All(one.Expect.Shows ?? [], pointer => Assert.Contains(answer.Evidence!, evidence => evidence.Pointer == pointer));
        Assert.All(RuleSet.AnswersOf(ruleId, evaluation).Where(finding => finding.Message is not null), finding => Assert.Null(WordingTests.GapIn(finding)));
        Assert.All(RuleSet.AnswersOf(ruleId, evaluation).Where(finding => finding.Outcome == Outcome.Pass), finding => Assert.False(finding.Margin < 0));
        var asked = evaluation.Missing.Where(item => item.NeededBy.Contains(ruleId)).Select(item => item.Pointer).ToList();
        Assert.Equal((one.Expect.Missing ?? []).Order(StringComparer.Ordinal), asked.Order(StringComparer.Ordinal));
    }
}
