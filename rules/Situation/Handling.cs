using Findings;
using Records;
using Rules.Combustion;
using Rules.Tightness;
using Visits;

namespace Rules.Situation;

/// <summary>What was done about a danger, as far as the record shows that it counts.</summary>
internal static class Handling
{
    private static readonly IReadOnlyList<string> GasSections = ["/escape", "/tightnessTests", "/disturbedJoints", "/pipework"];

    /// <summary>What became of a danger by the defect that answers it.</summary>
    /// <param name="recorded">The defect.</param>
    /// <param name="finding">What shows the danger; null, or a finding about the defect itself: the engineer's word alone does.</param>
    /// <param name="visit">The visit.</param>
    public static DangerState StateOf(RecordedDefect recorded, Finding? finding, Visit visit)
    {
        if (IsPutRight(recorded, finding, visit))
            return DangerState.PutRight;
        if (IsTakenOutOfUse(recorded, finding, visit))
            return DangerState.TakenOutOfUse;
        return recorded.IsLeftByRefusal(finding, visit) ? DangerState.LeftByRefusal : DangerState.Standing;
    }

    /// <summary>Was something done about the danger that counts?</summary>
    public static bool IsDealtWith(RecordedDefect recorded, Finding? finding, Visit visit) =>
        StateOf(recorded, finding, visit) != DangerState.Standing || IsMadeKnownElsewhere(recorded, finding);

    /// <summary>
    /// Put right and shown right. What was measured or seen and still stands in the record was not put right, whatever the defect says.
    /// </summary>
    public static bool IsPutRight(RecordedDefect recorded, Finding? finding, Visit visit) =>
        recorded.Defect.Action == DefectAction.Rectified && IsOfTheDefectItself(recorded, finding) && IsShownRight(recorded, visit);

    /// <summary>
    /// Was it looked at again? A leak by a tightness test after the work, a flue reading by a later one; anything else at a time of the visit,
    /// for what the section then says is the state as left.
    /// </summary>
    public static bool IsShownRight(RecordedDefect recorded, Visit visit)
    {
        if (recorded.IsOfGas(visit))
            return !TightnessProof.LeakStands(visit) && visit.TestsAfterWork?.Any(test => TightnessProof.ShowsTight(test.Pointer, visit, []) == true) == true;

        var isRead = visit.Readings?.Any(reading => reading.Pointer == recorded.Defect.Subject && reading.Value.TakenAt is not null && visit.After(reading.Value).Any(visit.IsGood)) == true;
        return isRead || IsWithinTheVisit(recorded.Defect, visit);
    }

    /// <summary>Nobody can use it as it was left, and what is dangerous is cut off: only turned off, an immediate danger is not.</summary>
    public static bool IsTakenOutOfUse(RecordedDefect recorded, Finding? finding, Visit visit)
    {
        if (!IsIsolatedAndLeftOff(recorded, visit))
            return false;

        // What is measured on this installation is not cut off at another appliance by a word.
        if (!recorded.IsOfThisAppliance && !IsOfTheDefectItself(recorded, finding) && !recorded.IsIsolatedUpstream())
            return false;

        return !recorded.IsImmediate(finding) || recorded.IsDisconnected(visit) || (recorded.IsOfGas(visit) && recorded.IsIsolatedUpstream());
    }

    /// <summary>What is dangerous is cut off, and the boiler was left off.</summary>
    public static bool IsIsolatedAndLeftOff(RecordedDefect recorded, Visit visit) => recorded.IsTakenOutOfUse && recorded.IsLeftOff(visit) && recorded.IsIsolated(visit);

    /// <summary>Permission was refused, and nothing was done.</summary>
    public static bool IsRefused(RecordedDefect recorded) => recorded.Defect is { Permission: Consent.Refused, Action: null or DefectAction.None };

    /// <summary>
    /// Not of this boiler, and made known: of another appliance to the responsible person, with the label offered; of the supply to whoever
    /// answers for it. More is not for the engineer who found it.
    /// </summary>
    public static bool IsMadeKnownElsewhere(RecordedDefect recorded, Finding? finding = null) => recorded.Defect switch
    {
        _ when recorded.IsOfThisAppliance || !IsOfTheDefectItself(recorded, finding) => false,
        { Concerns: DefectConcern.OtherAppliance } defect => defect.UserToldNotToUse == true && defect.Labelled == true && defect.Told is { Count: > 0 },
        { Concerns: DefectConcern.Supply } defect => defect.Told?.Any(told => told is ToldParty.Transporter or ToldParty.Supplier or ToldParty.EmergencyService) == true,
        _ => false,
    };

    /// <summary>Is what is dangerous cut off at the place that the defect names?</summary>
    public static bool IsIsolated(this RecordedDefect recorded, Visit visit)
    {
        var defect = recorded.Defect;
        if (defect.IsolatedAt is null or IsolationPoint.NotIsolated)
            return false;
        if (!recorded.IsOfThisAppliance)
            return true;
        if (recorded.IsOfGas(visit))
            return recorded.IsIsolatedUpstream() || (defect.IsolatedAt == IsolationPoint.ApplianceValve && !IsAboveTheApplianceValve(recorded, visit));
        if (recorded.IsAt("/electrical", Topics.Electrical))
            return defect.IsolatedAt == IsolationPoint.ElectricalSupply || visit.Record.Electrical?.SupplyOff == true;
        if (visit.Appliance.SharedFlue == true && (recorded.IsAt("/flue", Topics.Flue) || recorded.IsAt("/ambientCo", Topics.AmbientAir)) && !IsToldToTheOthers(defect))
            return false;
        if (IsOfUnknownSource(recorded, visit))
            return defect.IsolatedAt is IsolationPoint.EmergencyControl or IsolationPoint.Meter or IsolationPoint.OtherAppliances;

        // Every appliance of the room is this one too.
        return recorded.IsIsolatedUpstream() || defect.IsolatedAt is IsolationPoint.ApplianceValve or IsolationPoint.OtherAppliances
            || (defect.IsolatedAt == IsolationPoint.ElectricalSupply && defect.Class != DefectClass.ImmediatelyDangerous);
    }

    /// <summary>Is it gas that escapes, or may?</summary>
    public static bool IsOfGas(this RecordedDefect recorded, Visit visit)
    {
        if (recorded.Defect.Subject is { Length: > 0 } place && visit.DisturbedJoints?.FirstOrDefault(joint => DefectWords.IsIn(place, joint.Pointer)) is { Value: { } joint })
            return joint.CarriesGasOrMay();

        return recorded.Defect.Topic is Topics.Tightness or Topics.Joints
            || (recorded.Defect.Subject is { Length: > 0 } other ? GasSections.Any(section => DefectWords.IsIn(other, section)) : recorded.Defect.Mechanism == DefectMechanism.GasLeak);
    }

    // The engineer's word alone, and nothing that was measured or seen.
    private static bool IsOfTheDefectItself(RecordedDefect recorded, Finding? finding) => finding is null || finding.Subject == recorded.Pointer;

    // A place that is named outweighs a topic.
    private static bool IsAt(this RecordedDefect recorded, string section, string topic) =>
        recorded.Defect.Subject is { Length: > 0 } place ? DefectWords.IsIn(place, section) : recorded.Defect.Topic == topic;

    private static bool IsIsolatedUpstream(this RecordedDefect recorded) =>
        recorded.Defect.IsolatedAt is IsolationPoint.PipeSection or IsolationPoint.EmergencyControl or IsolationPoint.Meter;

    // What a tightness test shows, or the pipework, may leak anywhere: only a later tight test shows that the valve of the boiler cut it off.
    private static bool IsAboveTheApplianceValve(RecordedDefect recorded, Visit visit)
    {
        if (visit.DisturbedJoints?.FirstOrDefault(joint => DefectWords.IsIn(recorded.Defect.Subject ?? "", joint.Pointer)) is { Value: { } joint })
            return joint.Place is null or JointPlace.Other || joint.IsAboveTheApplianceValve();

        return TightnessProof.LeakStands(visit) || (recorded.Defect.Subject is not { } place || !place.StartsWith("/appliance", StringComparison.Ordinal))
            && visit.TestsAfterWork?.Any(test => TightnessProof.ShowsTight(test.Pointer, visit, []) == true) != true;
    }

    // Products in the room on arrival, and nothing at this boiler that would explain them: any appliance of the room may be the source.
    private static bool IsOfUnknownSource(RecordedDefect recorded, Visit visit) =>
        recorded.IsAt("/ambientCo", Topics.AmbientAir)
        && visit.Record.Flue is not ({ CaseSealOk: false } or { VisualOk: false } or { SpillageTestPassed: false } or { FlowTestPassed: false } or { EffectivenessConfirmed: false })
        && visit.Record.AmbientCo?.RunningPeakPpm is null;

    // A flue of several homes goes on carrying the products of the others.
    private static bool IsToldToTheOthers(Defect defect) =>
        defect.Told is { } told && (told.Contains(ToldParty.BuildingManager) || told.Contains(ToldParty.OtherOccupiers));

    private static bool IsWithinTheVisit(Defect defect, Visit visit) =>
        defect.ReexaminedAt is { } again && again.Value <= visit.Record.FinishedAt.Value && !(again.Value < visit.Record.StartedAt?.Value) && !(again.Value < defect.FoundAt?.Value);
}
