using Findings;
using NRules.Fluent.Dsl;
using NRules.RuleModel;

namespace Kernel;

/// <summary>
/// A rule over what other rules found: it matches the visit, its findings and what the visit adds, and may join and chain. It runs
/// only for visits that have a problem or add something.
/// </summary>
public abstract class InferenceRule : Rule, IComplianceRule
{
    /// <inheritdoc />
    public RuleInfo Info => field ??= RuleInfo.Of(GetType());

    /// <summary>The limit <paramref name="id"/>, noted as read by this rule: conditions run in an order of the engine's own.</summary>
    protected Limit LimitOf(JudgedVisit visit, string id)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.Judgements.Watch(this, id);
    }

    /// <summary>Reports a conclusion about <paramref name="subject"/> and lets further rules match it.</summary>
    protected void Conclude(IContext context, JudgedVisit visit, string subject, Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(verdict);
        visit.Judgements.Conclude(this, new Answer(subject, verdict));
        context.Insert(new Conclusion(Info.Id, subject, verdict));
    }
}

/// <summary>What an inference rule concluded, as a fact for further rules.</summary>
public sealed class Conclusion(string ruleId, string subject, Verdict verdict)
{
    /// <summary>The rule that concluded.</summary>
    public string RuleId { get; } = ruleId;

    /// <summary>What it is about.</summary>
    public string Subject { get; } = subject;

    /// <summary>What it says.</summary>
    public Verdict Verdict { get; } = verdict;
}
