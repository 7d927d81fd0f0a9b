using Findings;
using Kernel;
using Kernel.Catalogues;
using Kernel.Engine;
using Records;
using Visits.Figures;
using Wire;

namespace Visits.Judging;

/// <summary>Judges service records. One for each catalogue; safe to use from any thread.</summary>
public sealed class ComplianceEngine
{
    private readonly JudgingEngine _engine;

    private ComplianceEngine(JudgingEngine engine) => (_engine, Law) = (engine, engine.Catalogue.Part<IVisitLaw>());

    /// <summary>What is asked of the law beside the rules.</summary>
    public IVisitLaw Law { get; }

    /// <summary>The rules in force and all that decides an answer.</summary>
    public RuleCatalogue Catalogue => _engine.Catalogue;

    /// <summary>Compiles <paramref name="catalogue"/>.</summary>
    public static ComplianceEngine Start(RuleCatalogue catalogue) => new(JudgingEngine.Start(catalogue));

    /// <summary>Compiles in an order of its own: no order may reach an answer, and the tests see to that.</summary>
    internal static ComplianceEngine Start(RuleCatalogue catalogue, IReadOnlyList<IComplianceRule> loadOrder) => new(JudgingEngine.Start(catalogue, loadOrder));

    /// <summary>The visit that a record tells of, as the rules see it.</summary>
    /// <param name="record">A record without faults.</param>
    /// <param name="lookup">What was looked up beside it.</param>
    /// <param name="asOf">Whose law; default the date written in <c>finishedAt</c>.</param>
    /// <param name="lookedAtOn">From which day deadlines are seen; default <paramref name="asOf"/>.</param>
    /// <param name="detail">How much of what the rules see is kept.</param>
    /// <exception cref="InvalidOperationException">The rules do not hold the law of its jurisdiction: by the limits that are the same everywhere it might pass.</exception>
    public Visit VisitOf(ServiceRecord record, Lookup? lookup = null, DateOnly? asOf = null, DateOnly? lookedAtOn = null, Detail detail = Detail.Everything)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Catalogue.JurisdictionCodes.Contains(record.Jurisdiction, StringComparer.Ordinal)
            ? new(record, Catalogue.Limits, Law, FigureSheet.Of, lookup, asOf, lookedAtOn, detail)
            : throw new InvalidOperationException($"These rules do not hold the law of {record.Jurisdiction}.");
    }

    /// <summary>Judges one record. The answer is complete: every rule in force answers once for each of its subjects.</summary>
    /// <inheritdoc cref="VisitOf" path="/param" />
    public Evaluation Evaluate(ServiceRecord record, Lookup? lookup = null, DateOnly? asOf = null, DateOnly? lookedAtOn = null, Detail detail = Detail.Everything) =>
        _engine.Evaluate(VisitOf(record, lookup, asOf, lookedAtOn, detail));

    /// <summary>As <see cref="Evaluate"/>, without what does not decide: order, figures, duties and hashes.</summary>
    /// <inheritdoc cref="VisitOf" path="/param" />
    public Answers Answer(ServiceRecord record, Lookup? lookup = null, DateOnly? asOf = null, DateOnly? lookedAtOn = null) =>
        _engine.Answer(VisitOf(record, lookup, asOf, lookedAtOn, Detail.Problems));

    /// <summary>The answers alone, in no order, by other limits if given: for tests that judge by the hundred thousand.</summary>
    internal IReadOnlyList<Finding> AnswersTo(ServiceRecord record, LimitBook? limits = null, Lookup? lookup = null) =>
        _engine.AnswersTo(new Visit(record, limits ?? Catalogue.Limits, Law, FigureSheet.Of, lookup));

    /// <summary>What the next known change after <paramref name="evaluation"/>'s law would make of it: judges <paramref name="record"/> once more.</summary>
    /// <param name="evaluation">The whole evaluation of the record.</param>
    /// <param name="record">The record.</param>
    /// <param name="lookup">What was looked up beside it.</param>
    public NextChange NextChange(Evaluation evaluation, ServiceRecord record, Lookup? lookup = null)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        ArgumentNullException.ThrowIfNull(record);
        return _engine.NextChange(evaluation, WireNames.Of(record.Appliance.Fuel), record.Jurisdiction, on => Evaluate(record, lookup, on, evaluation.LookedAtOn));
    }
}
