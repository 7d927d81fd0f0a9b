using Findings;
using NRules.Fluent.Dsl;
using NRules.RuleModel;
using Records;

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
        return finding.Subject == Pointer || Answers(finding.Subject, finding.Topic);
    }

    /// <summary>Is what is found at <paramref name="subject"/> recorded as put right?</summary>
    public bool PutsRight(string subject, string topic) => Defect.Action == DefectAction.Rectified && Answers(subject, topic);

    /// <summary>
    /// Does <paramref name="finding"/> stand no longer, though the appliance stays in use? Put right settles what is found about the
    /// defect itself; it does not settle a measurement, which still stands. A refusal that was dealt with settles what it answers.
    /// </summary>
    public bool SettlesInUse(Finding finding) =>
        Answers(finding) && (IsRefusalDealtWith(finding.ExpectedClass) || (finding.Subject == Pointer && Defect.Action == DefectAction.Rectified));

    /// <summary>The same of an appliance that nobody can use as it was left: taking it out of use settles what the defect answers.</summary>
    public bool SettlesOutOfUse(Finding finding) => SettlesInUse(finding) || (IsTakenOutOfUse && Answers(finding));

    /// <summary>Did the engineer class it as at risk or immediately dangerous?</summary>
    public bool IsDangerous => Defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous;

    /// <summary>Does the defect say that the appliance was taken out of use? Whether it was left so, the record says elsewhere.</summary>
    public bool IsTakenOutOfUse => Defect.Action is DefectAction.Disconnected or DefectAction.TurnedOff;

    /// <summary>
    /// Permission was refused, so nothing was done, and what the procedure then asks is there: the emergency provider's reference, or the
    /// signed acceptance. The signature is for At Risk, by the engineer's class and by what was <paramref name="found"/>.
    /// </summary>
    public bool IsRefusalDealtWith(ExpectedClass? found = null) =>
        IsDangerous && Defect is { Permission: Consent.Refused, Action: null or DefectAction.None }
        && (!string.IsNullOrWhiteSpace(Defect.EmergencyReference)
            || (Defect is { Class: DefectClass.AtRisk, UserSigned: true } && found != ExpectedClass.ImmediatelyDangerous));

    private bool Answers(string subject, string topic) => Defect.Subject is { Length: > 0 } own
        ? subject == own || subject.StartsWith(own + "/", StringComparison.Ordinal)
        : Defect.Topic == topic;
}
