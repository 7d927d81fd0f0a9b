using System.Collections.Immutable;
using Findings;
using RuleModel;

namespace RuleEngine;

/// <summary>
/// Turns what the engine fired into answers, one for each rule in force and each of its subjects. Silence is not an answer: a rule that
/// threw, that the engine never asked, or whose problem it did not report ends as an error.
/// </summary>
internal sealed class CompletenessPass(RuleCatalogue catalogue, Visit visit)
{
    private readonly List<Settled> _settled = new(catalogue.Rules.Count * 5 / 4);

    public IReadOnlyList<Settled> Settled => _settled;

    public void Settle(IReadOnlyList<IComplianceRule> rules, IReadOnlyDictionary<IComplianceRule, Exception> failed)
    {
        foreach (var rule in rules)
        {
            if (!IsInForce(rule))
                continue;
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

    public void SettleInference(IReadOnlyList<IComplianceRule> rules, IReadOnlyDictionary<IComplianceRule, Exception> failed, bool isCalledFor)
    {
        foreach (var rule in rules)
        {
            if (!IsInForce(rule))
                continue;
            if (failed.TryGetValue(rule, out var exception))
                Add(rule, Failed(exception.GetType().Name));
            else if (visit.Judgements.Of(rule) is { } judgement)
                AddAll(rule, InOrder(judgement.Answers));
            else
                Add(rule, isCalledFor ? NoCause : NothingToJudge);
        }
    }

    public Evaluation ToEvaluation(string engineVersion) => new EvaluationBuilder(catalogue, visit, _settled).Build(engineVersion);

    public Answers ToAnswers()
    {
        List<Finding> findings = [.. _settled.Select(settled => settled.Finding)];
        return new Answers(findings, Outcomes.Combine(OutcomeCounts.Of(findings), _settled.Exists(settled => settled.Verdict.Missing.Count > 0)));
    }

    private static Answer NoCause { get; } = new("", new Look("").Pass($"the findings and recorded defects give no cause"));

    private static Answer NothingToJudge { get; } = new("", new Look("").NotApplicable($"there is no finding and no recorded defect to judge"));

    private bool IsInForce(IComplianceRule rule) => rule.Info.IsInForce(visit.AsOf);

    /// <summary>The engine concludes in no order that could be relied on.</summary>
    private static ImmutableArray<Answer> InOrder(ImmutableArray<Answer> conclusions) => [.. conclusions
        .OrderBy(conclusion => conclusion.Subject, PointerOrder.Instance)
        .ThenBy(conclusion => conclusion.Verdict.Message is { } message ? WireText.Sentence(message) : "", StringComparer.Ordinal)];

    private void AddAll(IComplianceRule rule, ImmutableArray<Answer> answers)
    {
        foreach (var answer in answers)
            Add(rule, answer);
    }

    private void Add(IComplianceRule rule, Answer answer)
    {
        if (visit.Judgements.LoosenedFor(rule) is { } loosened)
            answer = answer with { Verdict = answer.Verdict.JudgedWith(loosened) };
        var face = catalogue.FaceOf(rule);
        _settled.Add(new Settled(face, answer.Verdict, face.FindingOf(answer)));
    }

    private static Answer Failed(string why) => new("", Verdict.Error($"the rule could not be judged ({why}); this is no pass"));
}

/// <summary>An answer as it stands in the end.</summary>
internal readonly record struct Settled(RuleFace Face, Verdict Verdict, Finding Finding);
