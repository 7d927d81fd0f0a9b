using Findings;

namespace Rules.Tests;

/// <summary>Every case beside every rule, run through the full rule set.</summary>
public sealed class CasesTests
{
    public static TheoryData<string, string> All
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var (rule, one) in RuleSet.Cases)
                data.Add(rule.Info.Id, one.Name);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Rule_says_what_its_case_expects(string ruleId, string name)
    {
        var (_, one) = RuleSet.Cases.Single(pair => pair.Rule.Info.Id == ruleId && pair.Case.Name == name);
        var evaluation = RuleSet.Engine.Evaluate(RuleSet.RecordOf(one));
        var answers = RuleSet.AnswersOf(ruleId, evaluation);

        var answer = one.Expect.Subject is { } subject
            ? Assert.Single(answers, candidate => candidate.Subject == subject)
            : answers.MinBy(candidate => candidate.Outcome)!;

        Assert.Equal((one.Expect.Outcome, answer.Message), (answer.Outcome, answer.Message));
        if (one.Expect.ExpectedClass is { } expectedClass)
            Assert.Equal(expectedClass, answer.ExpectedClass);
        if (one.Expect.Margin is { } margin)
            Assert.Equal(margin, answer.Margin);
        if (one.Expect.Says is { } words)
            Assert.Contains(words, answer.Message, StringComparison.Ordinal);
        var asked = evaluation.Missing.Where(item => item.NeededBy.Contains(ruleId)).Select(item => item.Pointer).ToList();
        Assert.All(one.Expect.Missing ?? [], pointer => Assert.Contains(pointer, asked));
        Assert.True(answer.Outcome != Outcome.Error, answer.Message);
    }

    [Fact]
    public void No_two_cases_of_a_rule_share_a_name() => Assert.All(
        RuleSet.Catalogue.Cases, entry => Assert.Equal(entry.Value.Count, entry.Value.Select(one => one.Name).Distinct().Count()));
}
