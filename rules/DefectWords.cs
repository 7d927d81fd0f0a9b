using Findings;
using Records;
using Visits;

namespace Rules;

/// <summary>What the record itself says of its defects and of an escape, as rules of many topics ask it.</summary>
internal static class DefectWords
{
    /// <summary>Is <paramref name="pointer"/> the place <paramref name="section"/>, or below it? The empty place holds everything.</summary>
    public static bool IsIn(string pointer, string section) =>
        section.Length == 0 || pointer == section || pointer.StartsWith(section + "/", StringComparison.Ordinal);

    /// <summary>Does it name <paramref name="subject"/> or what holds it? Without a subject it speaks of all of its topic.</summary>
    public static bool IsRecordedAt(this RecordedDefect recorded, string subject, string topic) => recorded.Defect.Subject is { Length: > 0 } own
        ? IsIn(subject, own)
        : recorded.Defect.Topic == topic && (recorded.IsOfThisAppliance || IsOfThePipework(topic));

    /// <summary>Is what is found at <paramref name="subject"/> recorded as put right?</summary>
    public static bool IsPutRight(this Visit visit, string subject, string topic) =>
        visit.RecordedDefects.Any(recorded => recorded.Defect.Action == DefectAction.Rectified && recorded.IsRecordedAt(subject, topic));

    /// <summary>
    /// Was what is found at <paramref name="subject"/> recorded as a danger, and left off or left by a refusal, so that nobody asks for the maker's
    /// word on it? Whether that counts is asked of the danger.
    /// </summary>
    public static bool IsMadeADefect(this Visit visit, string subject, string topic) => visit.RecordedDefects.Any(recorded =>
        recorded.IsDangerous && recorded.IsRecordedAt(subject, topic) && (recorded.IsLeftByRefusal(finding: null, visit)
            || (recorded.IsTakenOutOfUse && recorded.IsLeftOff(visit) && (!recorded.IsImmediate(finding: null) || recorded.IsDisconnected(visit)))));

    /// <summary>
    /// Refused, and what the procedure then asks is there. The signature is for At Risk, by the engineer's class and by what was found. An
    /// installer may not leave what he put in connected unless it can be used safely (GSIUR 26(5), 33(2)), whoever signs.
    /// </summary>
    public static bool IsLeftByRefusal(this RecordedDefect recorded, Finding? finding, Visit visit) =>
        recorded.IsRefusalDealtWith && !(visit.Record.JobType == JobType.Commissioning && !visit.HadNoAccess)
        && (!recorded.IsImmediate(finding) || !string.IsNullOrWhiteSpace(recorded.Defect.EmergencyReference));

    /// <summary>Was what is dangerous left off?</summary>
    // Of a boiler that nobody got to, nobody can say how it was left; what was cut off outside it is out of use all the same.
    public static bool IsLeftOff(this RecordedDefect recorded, Visit visit) =>
        visit.IsLeftOutOfUse || !recorded.IsOfThisAppliance || (visit.HadNoAccess && visit.Appliance.StateOnLeaving is null);

    /// <summary>Disconnected: a boiler that was left turned off was not, whatever the defect says.</summary>
    public static bool IsDisconnected(this RecordedDefect recorded, Visit visit) => recorded.Defect.Action == DefectAction.Disconnected
        && (!recorded.IsOfThisAppliance || visit.Appliance.StateOnLeaving != StateOnLeaving.TurnedOff);

    /// <summary>Immediately dangerous, by the engineer's class or by the one to be expected of what was found.</summary>
    public static bool IsImmediate(this RecordedDefect recorded, Finding? finding) =>
        recorded.Defect.Class == DefectClass.ImmediatelyDangerous || finding?.ExpectedClass == ExpectedClass.ImmediatelyDangerous;

    /// <summary>After an escape the gas was shut off, and the emergency provider's reference is recorded.</summary>
    public static bool EscapeIsMadeSafe(this Visit visit) => visit.GasIsShutOff() && visit.EscapeIsCalledIn();

    /// <summary>The record says that the gas was shut off, and does not say beside it that nothing was isolated.</summary>
    public static bool GasIsShutOff(this Visit visit) => visit.Record.Escape is { GasIsolated: true, IsolatedAt: not IsolationPoint.NotIsolated };

    /// <summary>The reference of the emergency provider, or of the supplier of LPG, is recorded.</summary>
    public static bool EscapeIsCalledIn(this Visit visit) => !string.IsNullOrWhiteSpace(visit.Record.Escape?.Reference);

    // The gas pipework is common to all appliances: a leak of the installation may be that of another.
    private static bool IsOfThePipework(string topic) => topic is Topics.Tightness or Topics.Joints or Topics.GasPressure or Topics.UnsafeSituation;
}
