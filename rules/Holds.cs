using Visits;

namespace Rules;

/// <summary>What keeps a job open until it is cured, or recorded as a defect.</summary>
internal static class Holds
{
    /// <summary>The member to ask for; nothing where the engineer recorded a defect of one of the topics, or one at that place of the record.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="asked">JSON Pointer of the member.</param>
    /// <param name="place">JSON Pointer of the section or member that is at fault.</param>
    /// <param name="topics">Topics of the fault.</param>
    public static IReadOnlyList<string> AskedUnlessADefect(this Visit visit, string asked, string place, params IReadOnlyList<string> topics) =>
        visit.RecordedDefects.Any(recorded => recorded.IsOf(place, topics)) ? [] : [asked];

    /// <summary>Is the defect of one of the topics, or at that place of the record, above or below it?</summary>
    public static bool IsOf(this RecordedDefect recorded, string place, params IReadOnlyList<string> topics) =>
        topics.Contains(recorded.Defect.Topic, StringComparer.Ordinal)
        || (recorded.Defect.Subject is { Length: > 0 } subject && (DefectWords.IsIn(subject, place) || DefectWords.IsIn(place, subject)));

    /// <summary>A defect of <paramref name="topic"/> is recorded, or one that names <paramref name="section"/> or something in it.</summary>
    public static bool HasDefectOf(this Visit visit, string topic, string section) =>
        visit.RecordedDefects.Any(recorded => recorded.Defect.Topic == topic || (recorded.Defect.Subject is { Length: > 0 } subject && DefectWords.IsIn(subject, section)));
}
