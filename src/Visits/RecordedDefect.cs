using Findings;
using Records;

namespace Visits;

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
