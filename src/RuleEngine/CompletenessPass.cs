using Findings;
using RuleModel;

namespace RuleEngine;

/// <summary>
/// Turns what the engine fired into answers, one for each rule in force and each of its subjects. Silence is not an answer: a rule that
/// threw, that the engine never asked, or whose problem it did not report ends as an error.
/// </summary>
internal sealed class CompletenessPass(RuleCatalogue catalogue, Visit visit)
{
    private readonly List<(ComplianceRule Rule, Answer Answer)> _answers = [];
    private readonly List<Finding> _findings = [];

    public IReadOnlyList<Finding> Findings => _findings;

    public void Settle(IEnumerable<ComplianceRule> rules, IReadOnlyDictionary<ComplianceRule, Exception> failed)
    {
        foreach (var rule in rules.Where(IsInForce))
        {
            if (failed.TryGetValue(rule, out var exception))
                Add(rule, Failed(exception.GetType().Name));
            else if (visit.Judgements.Of(rule) is not { } judgement)
                Add(rule, Failed("it was never asked"));
            else if (judgement.Concerns && !judgement.Reported)
                Add(rule, Failed("its findings were not reported"));
            else
                AddAll(rule, judgement.Answers);
        }
    }

    public void SettleInference(IEnumerable<ComplianceRule> rules, IReadOnlyDictionary<ComplianceRule, Exception> failed, bool isCalledFor)
    {
        foreach (var rule in rules.Where(IsInForce))
        {
            var look = new Look("");
            if (failed.TryGetValue(rule, out var exception))
                Add(rule, Failed(exception.GetType().Name));
            else if (visit.Judgements.Of(rule) is { } judgement)
                AddAll(rule, InOrder(judgement.Answers));
            else
                Add(rule, new Answer("", isCalledFor
                    ? look.Pass($"the findings and recorded defects give no cause")
                    : look.NotApplicable($"there is no finding and no recorded defect to judge")));
        }
    }

    public Evaluation ToEvaluation(string engineVersion) => new EvaluationBuilder(catalogue, visit, _answers, _findings).Build(engineVersion);

    private bool IsInForce(ComplianceRule rule) => rule.Info.IsInForce(visit.AsOf);

    /// <summary>The engine concludes in no order that could be relied on.</summary>
    private static IEnumerable<Answer> InOrder(IReadOnlyList<Answer> conclusions) => conclusions
        .OrderBy(conclusion => conclusion.Subject, PointerOrder.Instance)
        .ThenBy(conclusion => conclusion.Verdict.Message is { } message ? WireText.Sentence(message) : "", StringComparer.Ordinal);

    private void AddAll(ComplianceRule rule, IEnumerable<Answer> answers)
    {
        foreach (var answer in answers)
            Add(rule, answer);
    }

    private void Add(ComplianceRule rule, Answer answer)
    {
        _answers.Add((rule, answer));
        _findings.Add(catalogue.FindingOf(rule, answer));
    }

    private static Answer Failed(string why) => new("", Verdict.Error($"the rule could not be judged ({why}); this is no pass"));
}
