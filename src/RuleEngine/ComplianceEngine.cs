using Findings;
using Records;
using RuleModel;

namespace RuleEngine;

/// <summary>
/// Judges service records. One for each process: it compiles the rule set once, at start, and is safe to use from any thread.
/// </summary>
public sealed class ComplianceEngine
{
    private static readonly Dictionary<IComplianceRule, Exception> Nothing = [];
    private static readonly string Version = typeof(ComplianceEngine).Assembly.GetName().Version!.ToString(3);

    private readonly IReadOnlyList<IComplianceRule> _firstRules;
    private readonly IReadOnlyList<IComplianceRule> _inferenceRules;
    private readonly CompiledRules _firstPass;
    private readonly CompiledRules _inference;

    private ComplianceEngine(RuleCatalogue catalogue, IReadOnlyList<IComplianceRule> loadOrder)
    {
        Catalogue = catalogue;
        _firstRules = [.. catalogue.Rules.OfType<FirstPassRule>()];
        _inferenceRules = [.. catalogue.Rules.OfType<InferenceRule>()];
        _firstPass = new CompiledRules(loadOrder.OfType<FirstPassRule>().ToList());
        _inference = new CompiledRules(loadOrder.OfType<InferenceRule>().ToList());
    }

    /// <summary>The rules in force and all that decides an answer.</summary>
    public RuleCatalogue Catalogue { get; }

    /// <summary>Compiles <paramref name="catalogue"/>.</summary>
    public static ComplianceEngine Start(RuleCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        return new ComplianceEngine(catalogue, catalogue.Rules);
    }

    /// <summary>Compiles in an order of its own: no order may reach an answer, and the tests see to that.</summary>
    internal static ComplianceEngine Start(RuleCatalogue catalogue, IReadOnlyList<IComplianceRule> loadOrder) => new(catalogue, loadOrder);

    /// <summary>Judges one record. The answer is complete: every rule in force answers once for each of its subjects.</summary>
    /// <param name="record">A record without faults.</param>
    /// <param name="lookup">What was looked up beside it.</param>
    /// <param name="asOf">Whose law; default the date written in <c>finishedAt</c>.</param>
    /// <param name="lookedAtOn">From which day deadlines are seen; default <paramref name="asOf"/>.</param>
    public Evaluation Evaluate(ServiceRecord record, Lookup? lookup = null, DateOnly? asOf = null, DateOnly? lookedAtOn = null) =>
        JudgeByKnownLaw(new Visit(record, Catalogue.Limits, lookup, asOf, lookedAtOn)).ToEvaluation(Version);

    /// <summary>As <see cref="Evaluate"/>, without what does not decide: order, figures, duties and hashes.</summary>
    public Answers Answer(ServiceRecord record, Lookup? lookup = null, DateOnly? asOf = null, DateOnly? lookedAtOn = null) =>
        JudgeByKnownLaw(new Visit(record, Catalogue.Limits, lookup, asOf, lookedAtOn)).ToAnswers();

    /// <summary>The answers alone, in no order, without figures and hashes, by other limits if given: for tests that judge by the hundred thousand.</summary>
    internal IReadOnlyList<Finding> AnswersTo(ServiceRecord record, LimitBook? limits = null, Lookup? lookup = null) =>
        Judge(new Visit(record, limits ?? Catalogue.Limits, lookup)).Findings;

    private CompletenessPass JudgeByKnownLaw(Visit visit)
    {
        var answers = Judge(visit);
        answers.SettleLaw();
        return answers;
    }

    private CompletenessPass Judge(Visit visit)
    {
        var answers = new CompletenessPass(Catalogue, visit);

        visit.Judgements.Expect(Catalogue.Rules.Count);
        var failed = _firstPass.Run([visit]);
        answers.Settle(_firstRules, failed);

        if (_inferenceRules.Count > 0)
            Infer(visit, answers);

        return answers;
    }

    /// <summary>What the next known change after <paramref name="evaluation"/>'s law would make of it: judges <paramref name="record"/> once more.</summary>
    /// <param name="evaluation">The whole evaluation of the record.</param>
    /// <param name="record">The record.</param>
    /// <param name="lookup">What was looked up beside it.</param>
    public NextChange NextChange(Evaluation evaluation, ServiceRecord record, Lookup? lookup = null)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        ArgumentNullException.ThrowIfNull(record);
        return new LawCalendar(Catalogue, record.Appliance.Fuel, record.Jurisdiction).After(evaluation.AsOf) is var (on, what)
            ? LawOutlook.Of(on, what, evaluation, Evaluate(record, lookup, on, evaluation.LookedAtOn))
            : LawOutlook.None;
    }

    private void Infer(Visit visit, CompletenessPass answers)
    {
        var facts = new List<object> { visit };
        facts.AddRange(answers.Findings.Where(finding => finding.Outcome is Outcome.Unsafe or Outcome.Advisory));

        facts.AddRange(visit.RecordedDefects);
        var isCalledFor = facts.Count > 1;
        answers.SettleInference(_inferenceRules, isCalledFor ? _inference.Run(facts) : Nothing, isCalledFor);
    }
}
