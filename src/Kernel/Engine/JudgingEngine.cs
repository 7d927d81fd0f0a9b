using Findings;
using Kernel.Catalogues;

namespace Kernel.Engine;

/// <summary>
/// Judges visits. One for each catalogue: it compiles the rules once, and is safe to use from any thread.
/// </summary>
public sealed class JudgingEngine
{
    private static readonly Dictionary<IComplianceRule, Exception> Nothing = [];
    private static readonly string Version = typeof(JudgingEngine).Assembly.GetName().Version!.ToString(3);

    private readonly IReadOnlyList<IComplianceRule> _firstRules;
    private readonly IReadOnlyList<IComplianceRule> _inferenceRules;
    private readonly CompiledRules _duties;
    private readonly CompiledRules _firstPass;
    private readonly CompiledRules _inference;

    private JudgingEngine(RuleCatalogue catalogue, IReadOnlyList<IComplianceRule> loadOrder)
    {
        Catalogue = catalogue;
        _firstRules = [.. catalogue.Rules.OfType<FirstPassRule>()];
        _inferenceRules = [.. catalogue.Rules.OfType<InferenceRule>()];
        _duties = new CompiledRules(catalogue.DutyRules);
        _firstPass = new CompiledRules(loadOrder.OfType<FirstPassRule>().ToList());
        _inference = new CompiledRules(catalogue.SituationRules, loadOrder.OfType<InferenceRule>().ToList());
    }

    /// <summary>The rules in force and all that decides an answer.</summary>
    public RuleCatalogue Catalogue { get; }

    /// <summary>Compiles <paramref name="catalogue"/>.</summary>
    /// <param name="catalogue">The rules.</param>
    /// <param name="loadOrder">An order of its own for the rules: no order may reach an answer, and the tests see to that.</param>
    public static JudgingEngine Start(RuleCatalogue catalogue, IReadOnlyList<IComplianceRule>? loadOrder = null)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        return new JudgingEngine(catalogue, loadOrder ?? catalogue.Rules);
    }

    /// <summary>Judges one visit. The answer is complete: every rule in force answers once for each of its subjects.</summary>
    public Evaluation Evaluate(JudgedVisit visit) => JudgeByKnownLaw(visit).ToEvaluation(Version);

    /// <summary>As <see cref="Evaluate"/>, without what does not decide: order, figures, duties and hashes.</summary>
    public Answers Answer(JudgedVisit visit) => JudgeByKnownLaw(visit).ToAnswers();

    /// <summary>What each rule says by itself, whatever the visit calls for, in no order, and nothing said of the law of the day: for tests that judge by the hundred thousand.</summary>
    public IReadOnlyList<Finding> AnswersTo(JudgedVisit visit) => Judge(visit, isWeighed: false).Findings;

    /// <summary>What the next known change after <paramref name="evaluation"/>'s law would make of it.</summary>
    /// <param name="evaluation">The whole evaluation.</param>
    /// <param name="fuel">The fuel, as the record names it; null where it does not.</param>
    /// <param name="jurisdiction">Whose law.</param>
    /// <param name="judgedBy">Judges the same once more by the law of a day.</param>
    public NextChange NextChange(Evaluation evaluation, string? fuel, string jurisdiction, Func<DateOnly, Evaluation> judgedBy)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        ArgumentNullException.ThrowIfNull(judgedBy);
        return new LawCalendar(Catalogue, fuel, jurisdiction).After(evaluation.AsOf) is var (on, what)
            ? LawOutlook.Of(on, what, evaluation, judgedBy(on))
            : LawOutlook.None;
    }

    private CompletenessPass JudgeByKnownLaw(JudgedVisit visit)
    {
        var answers = Judge(visit);
        answers.SettleLaw();
        return answers;
    }

    private CompletenessPass Judge(JudgedVisit visit, bool isWeighed = true)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var answers = new CompletenessPass(Catalogue, visit);

        visit.Judgements.Expect(Catalogue.Rules.Count);
        if (isWeighed && Catalogue.DutyRules.Count > 0)
            answers.SettleDuties(_duties.Run([visit]));
        var failed = _firstPass.Run([visit]);
        answers.Settle(_firstRules, failed);

        if (_inferenceRules.Count > 0)
            Infer(visit, answers);

        return answers;
    }

    private void Infer(JudgedVisit visit, CompletenessPass answers)
    {
        var facts = new List<object> { visit };
        facts.AddRange(answers.Findings.Where(finding => finding.Outcome is Outcome.Unsafe or Outcome.Advisory));
        facts.AddRange(visit.InferenceFacts);
        var isCalledFor = facts.Count > 1;
        answers.SettleInference(_inferenceRules, isCalledFor ? _inference.Run(facts) : Nothing, isCalledFor);
    }
}
