using Findings;
using Records;
using Visits;

namespace Rules;

/// <summary>What the inference rules ask of findings and defects, as plain calls: the engine compares conditions and overlooks parts of richer ones.</summary>
internal static class Danger
{
    /// <summary>Unsafe by what was measured or seen, not by a class on record.</summary>
    public static bool IsObserved(Finding finding) =>
        finding.Outcome == Outcome.Unsafe && !finding.Subject.StartsWith("/defects/", StringComparison.Ordinal);

    /// <summary>Unsafe, and neither put right nor left on by a refusal that was dealt with.</summary>
    public static bool Stands(Finding finding, Visit visit) =>
        finding.Outcome == Outcome.Unsafe && !visit.RecordedDefects.Any(defect => defect.SettlesInUse(finding));

    /// <summary>Unsafe, and no recorded defect answers it.</summary>
    public static bool IsUnanswered(Finding finding, Visit visit) =>
        finding.Outcome == Outcome.Unsafe && !visit.RecordedDefects.Any(defect => defect.Answers(finding));

    /// <summary>The defect answers an unsafe finding and is recorded lower than would be expected of it.</summary>
    public static bool IsRecordedLower(RecordedDefect defect, Finding finding) =>
        IsObserved(finding) && defect.Answers(finding) && (finding.ExpectedClass, defect.Defect.Class) is
            (ExpectedClass.ImmediatelyDangerous, DefectClass.AtRisk or DefectClass.Other) or (ExpectedClass.AtRisk, DefectClass.Other);

    /// <summary>A defect records as put right what is found at a subject.</summary>
    public static bool IsPutRight(this Visit visit, string subject, string topic) => visit.RecordedDefects.Any(defect => defect.PutsRight(subject, topic));

    /// <summary>A defect of <paramref name="topic"/> is recorded, or one that names <paramref name="section"/> or something in it.</summary>
    public static bool HasDefectOf(this Visit visit, string topic, string section) => visit.RecordedDefects.Any(recorded => recorded.Defect.Topic == topic
        || recorded.Defect.Subject == section || recorded.Defect.Subject?.StartsWith(section + "/", StringComparison.Ordinal) == true);

    /// <summary>After an escape the gas was shut off, and the emergency provider's reference is recorded.</summary>
    public static bool EscapeIsMadeSafe(this Visit visit) =>
        visit.Record.Escape is { GasIsolated: true } escape && !string.IsNullOrWhiteSpace(escape.Reference);

    /// <summary>Nothing is recorded as done about it.</summary>
    public static bool IsLeftAlone(RecordedDefect defect) => defect.Defect.Action is null or DefectAction.None;

    /// <summary>Advice on how the appliance burns and gets rid of its products.</summary>
    public static bool IsAdviceOnAirPath(Finding finding) =>
        finding.Outcome == Outcome.Advisory && finding.Topic is Topics.Combustion or Topics.Flue or Topics.Ventilation or Topics.AmbientAir;

    /// <summary>Within its limit, and an advisory only because the instrument cannot tell well enough: no defect of the appliance.</summary>
    public static bool IsOnlyUnsure(Finding finding, Visit visit) =>
        finding is { Margin: >= 0, Conformity: { } sure } && !visit.Limits[LimitIds.ConformityGuard].Allows(sure);
}
