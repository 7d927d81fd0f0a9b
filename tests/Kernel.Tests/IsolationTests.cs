using Visits.Judging;

namespace Kernel.Tests;

/// <summary>
/// The engine may share work between rules that it takes for equal. A rule compiled alone must say what it says in company; an
/// inference rule is alone among its kind, with all the rules whose findings it reads and those whose conclusions it follows.
/// </summary>
public sealed class IsolationTests
{
    [Fact]
    public void Every_rule_says_alone_what_it_says_in_company()
    {
        var records = Samples.CaseRecords.Prepend(("the example", Samples.Example)).ToList();
        var together = records.Select(sample => Samples.Engine.AnswersTo(sample.Item2)).ToList();

        foreach (var rule in Samples.Catalogue.Rules)
        {
            var engine = ComplianceEngine.Start(Samples.Catalogue.With(Company(rule)));
            foreach (var ((name, record), expected) in records.Zip(together))
            {
                var alone = Answers.Of(engine.AnswersTo(record), finding => finding.RuleId == rule.Info.Id);
                Assert.True(
                    alone.SequenceEqual(Answers.Of(expected, finding => finding.RuleId == rule.Info.Id)),
                    $"{rule.Info.Id} says otherwise alone: {name}");
            }
        }
    }

    private static List<IComplianceRule> Company(IComplianceRule rule) => rule is InferenceRule
        ? [.. Samples.Catalogue.Rules.Where(other => other is not InferenceRule || rule.Info.Follows.Contains(other.Info.Id, StringComparer.Ordinal)), rule]
        : [rule];
}
