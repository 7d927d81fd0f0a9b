using System.Collections.Immutable;
using Findings;
using Kernel.Catalogues;

namespace Kernel.Engine;

/// <summary>
/// Turns what the engine fired into answers, one for each rule in force and each of its subjects. Silence is not an answer: a rule that
/// threw, that the engine never asked, or whose problem it did not report ends as an error.
/// </summary>
internal sealed class CompletenessPass
{
    private readonly RuleCatalogue _catalogue;
    private readonly JudgedVisit _visit;
    private readonly Func<Finding, IStatement> _inFull;
    private readonly List<Finding> _findings;
    private readonly List<OpenAnswer> _open = [];

    public CompletenessPass(RuleCatalogue catalogue, JudgedVisit visit)
    {
        (_catalogue, _visit, _inFull) = (catalogue, visit, InFull);
        _findings = new List<Finding>(catalogue.Rules.Count * 5 / 4);
    }

    public IReadOnlyList<Finding> Findings => _findings;

    public void Settle(IReadOnlyList<IComplianceRule> rules, IReadOnlyDictionary<IComplianceRule, Exception> failed)
    {
        foreach (var rule in rules)
        {
            if (!IsInForce(rule))
                continue;
            if (failed.TryGetValue(rule, out var exception))
                Add(rule, Failed(exception.GetType().Name));
            else if (_visit.Judgements.Of(rule) is not { } judgement)
                Add(rule, Failed("it was never asked"));
            else if (judgement.Concerns && !judgement.Reported)
                Add(rule, Failed("its findings were not reported"));
            else
                AddAll(rule, judgement.Answers, _inFull);
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
            else if (_visit.Judgements.Of(rule) is { } judgement)
                AddAll(rule, InOrder(judgement.Answers));
            else
                Add(rule, isCalledFor ? NoCause : NothingToJudge);
        }
    }

    /// <summary>Says so where the rules do not know the law by which they judged.</summary>
    public void SettleLaw()
    {
        if (LawOfTheDay.Unknown(_catalogue.Header, _visit.AsOf) is { } unknown)
            _findings.Add(unknown);
    }

    public Evaluation ToEvaluation(string engineVersion) => new EvaluationBuilder(_catalogue, _visit, _findings, _open).Build(engineVersion);

    public Answers ToAnswers() =>
        new(_findings, Outcomes.Combine(OutcomeCounts.Of(_findings), _open.Exists(open => open.Verdict.Missing.Count > 0)));

    private static Answer NoCause { get; } = new("", Look.AtNothing.Pass($"the findings and recorded defects give no cause"));

    private static Answer NothingToJudge { get; } = new("", Look.AtNothing.NotApplicable($"there is no finding and no recorded defect to judge"));

    private bool IsInForce(IComplianceRule rule) => rule.Info.IsInForce(_visit.AsOf);

    /// <summary>The engine concludes in no order that could be relied on.</summary>
    private static ImmutableArray<Answer> InOrder(ImmutableArray<Answer> conclusions) => [.. conclusions
        .OrderBy(conclusion => conclusion.Subject, PointerOrder.Instance)
        .ThenBy(conclusion => conclusion.Verdict.Message is { } message ? WireText.Sentence(message) : "", StringComparer.Ordinal)];

    private void AddAll(IComplianceRule rule, ImmutableArray<Answer> answers, Func<Finding, IStatement>? inFull = null)
    {
        foreach (var answer in answers)
            Add(rule, answer, inFull);
    }

    private void Add(IComplianceRule rule, Answer answer, Func<Finding, IStatement>? inFull = null)
    {
        var verdict = Shown(rule, answer.Verdict);
        var finding = _catalogue.FaceOf(rule).FindingOf(answer.Subject, verdict, inFull);
        _findings.Add(finding);
        if (verdict.Missing.Count > 0 || verdict.Due is not null)
            _open.Add(new OpenAnswer(finding, verdict));
    }

    /// <summary>What a rule of the first pass says of the finding's subject, with evidence and sentence.</summary>
    private Verdict InFull(Finding finding)
    {
        var rule = (FirstPassRule)((RuleFace)finding.Rule).Rule;
        return Shown(rule, _visit.Judgements.InFull(rule).Answers.First(answer => answer.Subject == finding.Subject).Verdict);
    }

    private Verdict Shown(IComplianceRule rule, Verdict verdict) =>
        _visit.Judgements.LoosenedFor(rule) is { } loosened ? verdict.JudgedWith(loosened) : verdict;

    private static Answer Failed(string why) => new("", Verdict.Error($"the rule could not be judged ({why}); this is no pass"));
}

/// <summary>An answer that asks for something, or that sets a day.</summary>
internal readonly record struct OpenAnswer(Finding Finding, Verdict Verdict);
