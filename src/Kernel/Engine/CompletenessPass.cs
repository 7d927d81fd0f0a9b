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
    private readonly List<Finding> _findings;
    private readonly List<RuleFace?> _rules;
    private readonly List<OpenAnswer> _open = [];

    public CompletenessPass(RuleCatalogue catalogue, JudgedVisit visit)
    {
        (_catalogue, _visit) = (catalogue, visit);
        var expected = catalogue.Rules.Count * 5 / 4;
        (_findings, _rules) = (new List<Finding>(expected), new List<RuleFace?>(expected));
    }

    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>With a rule of the duties that failed nobody knows what falls away, so nothing does.</summary>
    public void SettleDuties(IReadOnlyDictionary<IComplianceRule, Exception> failed)
    {
        _visit.Owed.Settle(isKnown: failed.Count == 0);
        foreach (var (rule, exception) in failed)
            Add(rule, Failed(exception.GetType().Name));
    }

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
                AddAll(rule, IsReadInFull(rule, judgement) ? InFull((FirstPassRule)rule, judgement) : judgement.Answers);
        }
    }

    public void SettleInference(IReadOnlyList<IComplianceRule> rules, IReadOnlyDictionary<IComplianceRule, Exception> failed, bool isCalledFor)
    {
        foreach (var (rule, exception) in failed.Where(failure => failure.Key is SituationRule))
            Add(rule, Failed(exception.GetType().Name));
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
            Keep(unknown, rule: null);
    }

    public Evaluation ToEvaluation(string engineVersion) => new EvaluationBuilder(_catalogue, _visit, _findings, _rules, _open).Build(engineVersion);

    public Answers ToAnswers() =>
        new(_findings, Outcomes.Combine(OutcomeCounts.Of(_findings), _open.Exists(open => open.Verdict.Missing.Count > 0 && open.Verdict.Weight == Weight.Must)));

    private static Answer NoCause { get; } = new("", Look.AtNothing.Pass($"the findings and recorded defects give no cause"));

    private static Answer NothingToJudge { get; } = new("", Look.AtNothing.NotApplicable($"there is no finding and no recorded defect to judge"));

    private bool IsInForce(IComplianceRule rule) => rule.Info.IsInForce(_visit.AsOf);

    /// <summary>The engine concludes in no order that could be relied on.</summary>
    private static ImmutableArray<Answer> InOrder(ImmutableArray<Answer> conclusions) => [.. conclusions
        .OrderBy(conclusion => conclusion.Subject, PointerOrder.Instance)
        .ThenBy(conclusion => conclusion.Verdict.Message is { } message ? WireText.Sentence(message) : "", StringComparer.Ordinal)];

    /// <summary>What is reported is shown with its evidence, and so is what a loosened limit let pass.</summary>
    private bool IsReadInFull(IComplianceRule rule, Judgement judgement) =>
        _visit.Detail == Detail.Problems && (judgement.Concerns || _visit.Judgements.LoosenedFor(rule) is not null);

    /// <summary>The same answers with sentence and evidence. A rule that says something else when it is asked once more is not to be believed.</summary>
    private ImmutableArray<Answer> InFull(FirstPassRule rule, Judgement said)
    {
        try
        {
            var again = _visit.Judgements.InFull(rule).Answers;
            return again.Select(Decides).SequenceEqual(said.Answers.Select(Decides)) ? again : [Failed("it says two things of one record")];
        }
        catch (Exception exception)
        {
            return [Failed(exception.GetType().Name)];
        }

        static (string, Outcome, decimal?, ExpectedClass?) Decides(Answer answer) =>
            (answer.Subject, answer.Verdict.Outcome, answer.Verdict.Margin, answer.Verdict.ExpectedClass);
    }

    private void AddAll(IComplianceRule rule, ImmutableArray<Answer> answers)
    {
        foreach (var answer in answers)
            Add(rule, answer);
    }

    private void Add(IComplianceRule rule, Answer answer)
    {
        var verdict = Weighed(rule, Shown(rule, answer.Verdict));
        var face = _catalogue.FaceOf(rule);
        var finding = face.FindingOf(answer.Subject, verdict);
        Keep(finding, face);
        if (verdict.Missing.Count > 0)
            _visit.Owed.Contradict(verdict.Contradicted);
        if (verdict.Missing.Count > 0 || verdict.Due is not null)
            _open.Add(new OpenAnswer(finding, verdict));
    }

    private void Keep(Finding finding, RuleFace? rule)
    {
        _findings.Add(finding);
        _rules.Add(rule);
    }

    /// <summary>
    /// What the silence of the record means on this visit. What is recorded is judged whatever it weighs: only what is asked for, and not what
    /// was found, can fall away.
    /// </summary>
    private Verdict Weighed(IComplianceRule rule, Verdict verdict)
    {
        if (verdict.Missing.Count == 0 && verdict.Outcome != Outcome.Missing)
            return verdict;

        if (!_visit.Owed.IsKnown)
            return verdict.Weighing(verdict.Missing, []);

        List<string> must = [], should = [];
        var (isPutOff, because) = (false, (string?)null);
        foreach (var pointer in verdict.Missing)
        {
            // What is asked of a danger is asked because of it, whatever else the visit calls for.
            var silence = rule is InferenceRule ? Silence.Must : _visit.Owed.Of(rule.Info, pointer);
            // What follows from something that was found is asked for, whether the visit calls for that or not; of a boiler that runs.
            if (verdict.Outcome == Outcome.Advisory && silence != Silence.PutOff)
                silence = Silence.Must;
            var isAbsent = _visit.Lacks(pointer);
            if (silence < Silence.Should && isAbsent && verdict.Outcome != Outcome.Unsafe)
                isPutOff |= silence == Silence.PutOff;
            else if (verdict.Outcome != Outcome.Unsafe && _visit.ReasonNotDone(pointer, rule.Info.Serves, silence) is { } reason)
                because ??= reason;
            else
                (silence == Silence.Must || verdict.Outcome == Outcome.Unsafe ? must : should).Add(pointer);
        }

        // What waits is remembered, whatever else the rule asks for or a reason excuses.
        if (isPutOff && verdict.Outcome == Outcome.Missing)
            _visit.Owed.Defer(rule.Info);
        if (must.Count + should.Count > 0 || verdict.Missing.Count == 0)
            return verdict.Weighing(must, should);
        if (because is not null)
            return verdict.ForReason(because);
        if (verdict.Outcome != Outcome.Missing)
            return verdict.WithoutQuestions();
        return isPutOff ? Verdict.PutOff : Verdict.NotAsked;
    }

    private Verdict Shown(IComplianceRule rule, Verdict verdict) =>
        _visit.Judgements.LoosenedFor(rule) is { } loosened ? verdict.JudgedWith(loosened) : verdict;

    private static Answer Failed(string why) => new("", Verdict.Error($"the rule could not be judged ({why}); this is no pass"));
}

/// <summary>An answer that asks for something, or that sets a day.</summary>
internal readonly record struct OpenAnswer(Finding Finding, Verdict Verdict);
