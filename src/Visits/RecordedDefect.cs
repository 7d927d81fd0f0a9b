using Records;

namespace Visits;

/// <summary>A defect that the engineer recorded, with its place in the record.</summary>
public sealed class RecordedDefect(string pointer, Defect defect)
{
    /// <summary>JSON Pointer.</summary>
    public string Pointer { get; } = pointer;

    /// <summary>The defect.</summary>
    public Defect Defect { get; } = defect;

    /// <summary>Did the engineer class it as at risk or immediately dangerous?</summary>
    public bool IsDangerous => Defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous;

    /// <summary>Does the defect say that the appliance was taken out of use? Whether it was left so, the record says elsewhere.</summary>
    public bool IsTakenOutOfUse => Defect.Action is DefectAction.Disconnected or DefectAction.TurnedOff;

    /// <summary>Is it about this boiler? A defect that does not say is, and so is one that names a place of this record, whatever it says.</summary>
    public bool IsOfThisAppliance => Defect is { Concerns: null or DefectConcern.ThisAppliance } or { Subject.Length: > 0 };

    /// <summary>
    /// Permission was refused, so nothing was done, and what the procedure then asks is there: the emergency provider's reference, or for
    /// what the engineer classed as at risk the signed acceptance.
    /// </summary>
    public bool IsRefusalDealtWith =>
        IsDangerous && Defect is { Permission: Consent.Refused, Action: null or DefectAction.None }
        && (!string.IsNullOrWhiteSpace(Defect.EmergencyReference) || Defect is { Class: DefectClass.AtRisk, UserSigned: true });
}
