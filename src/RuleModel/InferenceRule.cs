using Findings;
using NRules.Fluent.Dsl;
using NRules.RuleModel;
using ServiceRecords;

namespace RuleModel;

/// <summary>
/// A rule over what other rules found: it matches the visit, its findings and its recorded defects, and may join and chain. It runs
/// only for visits that have a problem or a recorded defect.
/// </summary>
public abstract class InferenceRule : Rule, IComplianceRule
{
    /// <inheritdoc />
    public RuleInfo Info => field ??= RuleInfo.Of(GetType());

    /// <summary>The limit <paramref name="id"/>, noted as read by this rule: conditions run in an order of the engine's own.</summary>
    protected Limit LimitOf(Visit visit, string id)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.Judgements.Watch(this, id);
    }

    /// <summary>Reports a conclusion about <paramref name="subject"/> and lets further rules match it.</summary>
    protected void Conclude(IContext context, Visit visit, string subject, Verdict verdict)
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

/// <summary>A defect that the engineer recorded, with its place in the record.</summary>
public sealed class RecordedDefect(string pointer, Defect defect)
{
    /// <summary>JSON Pointer.</summary>
    public string Pointer { get; } = pointer;

    /// <summary>The defect.</summary>
    public Defect Defect { get; } = defect;

    /// <summary>
    /// Does this defect answer <paramref name="finding"/>? By its subject, which may be a section that holds the finding's; a defect
    /// that names no subject answers by topic. What is found about the defect itself it answers by being there.
    /// </summary>
    public bool Answers(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        if (finding.Subject == Pointer)
            return true;

        return Defect.Subject is { Length: > 0 } subject
            ? finding.Subject == subject || finding.Subject.StartsWith(subject + "/", StringComparison.Ordinal)
            : Defect.Topic == finding.Topic;
    }

    /// <summary>
    /// Does it stand no longer in the way of closing the job? Put right settles what is found about the defect itself; it does not
    /// settle a measurement, which still stands.
    /// </summary>
    public bool Settles(Finding finding) =>
        Answers(finding) && (IsDealtWith || (finding.Subject == Pointer && Defect.Action == DefectAction.Rectified));

    /// <summary>Did the engineer class it as at risk or immediately dangerous?</summary>
    public bool IsDangerous => Defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous;

    /// <summary>Does the record show that the appliance cannot go on endangering anyone as it was left, or that the procedure was gone through to its end?</summary>
    public bool IsDealtWith => Defect.Action is DefectAction.Disconnected or DefectAction.TurnedOff || IsRefusalDealtWith;

    /// <summary>Permission was refused, and what the procedure then asks is there: the emergency provider's reference, or for At Risk the signed acceptance.</summary>
    public bool IsRefusalDealtWith => Defect.Permission is Consent.Refused
        && (!string.IsNullOrWhiteSpace(Defect.EmergencyReference) || (Defect.Class == DefectClass.AtRisk && Defect.UserSigned == true));
}
