using Findings;
using Kernel.Catalogues;
using Records;
using Visits;

namespace Rules.Situation;

/// <summary>Which recorded defect is the engineer's word on which finding.</summary>
internal static class Answering
{
    /// <summary>Unsafe by what was measured or seen, not by a class on record.</summary>
    public static bool IsObserved(Finding finding) =>
        finding.Outcome == Outcome.Unsafe && !finding.Subject.StartsWith("/defects/", StringComparison.Ordinal);

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

    /// <summary>Does it answer <paramref name="finding"/> at its place, and no other defect does? Of several each owes its own handling.</summary>
    public static bool IsTheOnlyWordOn(this RecordedDefect recorded, Finding finding, Visit visit) =>
        recorded.AnswersAtItsPlace(finding) && visit.RecordedDefects.All(other => other.Pointer == recorded.Pointer || !other.Answers(finding));

    private static bool IsRead(string place, Finding finding) => finding.Evidence?.Any(seen => !seen.IsForClass && seen.Pointer == place) == true;

    private static bool IsAlsoRecordedAt(string place, Finding finding) => RuleCatalogue.RuleBehind(finding)?.AlsoRecordedAt.Any(also => DefectWords.IsIn(place, also)) == true;

    private static bool IsGraveEnough(RecordedDefect recorded, Finding finding) =>
        recorded.Defect.Class == DefectClass.ImmediatelyDangerous
        || (recorded.Defect.Class == DefectClass.AtRisk && finding.ExpectedClass != ExpectedClass.ImmediatelyDangerous);
}
