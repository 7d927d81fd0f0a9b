using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Situation;

/// <summary>Which recorded defect is the engineer's word on which finding.</summary>
internal static class Answering
{
    /// <summary>
    /// Does this defect answer <paramref name="finding"/>? By its subject: what the finding is about, a section that holds it, a member that
    /// it read, or a place at which the same danger may be recorded as well. A defect that names no subject answers by topic. What is found
    /// about the defect itself it answers by being there.
    /// </summary>
    public static bool Answers(this RecordedDefect recorded, Finding finding) =>
        recorded.AnswersAtItsPlace(finding)
        || (recorded.Defect.Subject is { Length: > 0 } place && IsGraveEnough(recorded, finding) && IsAlsoRecordedAt(place, finding));

    /// <summary>As above, without the further places at which the same danger may be recorded.</summary>
    public static bool AnswersAtItsPlace(this RecordedDefect recorded, Finding finding) =>
        finding.Subject == recorded.Pointer
        || recorded.IsRecordedAt(finding.Subject, finding.Topic)
        || (recorded.Defect.Subject is { Length: > 0 } place && IsRead(place, finding));

    /// <summary>Does it name <paramref name="subject"/> or what holds it? Without a subject it speaks of all of its topic.</summary>
    public static bool IsRecordedAt(this RecordedDefect recorded, string subject, string topic) => recorded.Defect.Subject is { Length: > 0 } own
        ? IsIn(subject, own)
        : recorded.Defect.Topic == topic && (recorded.IsOfThisAppliance || IsOfThePipework(topic));

    /// <summary>Does it answer <paramref name="finding"/> at its place, and no other defect does? Of several each owes its own handling.</summary>
    public static bool IsTheOnlyWordOn(this RecordedDefect recorded, Finding finding, Visit visit) =>
        recorded.AnswersAtItsPlace(finding) && visit.RecordedDefects.All(other => other.Pointer == recorded.Pointer || !other.Answers(finding));

    /// <summary>Is what is found at <paramref name="subject"/> recorded as put right?</summary>
    public static bool IsPutRight(this Visit visit, string subject, string topic) =>
        visit.RecordedDefects.Any(recorded => recorded.Defect.Action == DefectAction.Rectified && recorded.IsRecordedAt(subject, topic));

    /// <summary>Is <paramref name="pointer"/> the place <paramref name="section"/>, or below it? The empty place holds everything.</summary>
    public static bool IsIn(string pointer, string section) =>
        section.Length == 0 || pointer == section || pointer.StartsWith(section + "/", StringComparison.Ordinal);

    // The gas pipework is common to all appliances: a leak of the installation may be that of another.
    private static bool IsOfThePipework(string topic) => topic is Topics.Tightness or Topics.Joints or Topics.GasPressure or Topics.UnsafeSituation;

    private static bool IsRead(string place, Finding finding) => finding.Evidence?.Any(seen => !seen.IsForClass && seen.Pointer == place) == true;

    private static bool IsAlsoRecordedAt(string place, Finding finding) => RuleInfo.Behind(finding)?.AlsoRecordedAt.Any(also => IsIn(place, also)) == true;

    private static bool IsGraveEnough(RecordedDefect recorded, Finding finding) =>
        recorded.Defect.Class == DefectClass.ImmediatelyDangerous
        || (recorded.Defect.Class == DefectClass.AtRisk && finding.ExpectedClass != ExpectedClass.ImmediatelyDangerous);
}
