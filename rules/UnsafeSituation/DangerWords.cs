using Findings;
using Records;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

/// <summary>What the inference rules ask of findings and defects, as plain calls: the engine compares conditions and overlooks parts of richer ones.</summary>
internal static class DangerWords
{
    /// <summary>Found, and no recorded defect is the engineer's word on it.</summary>
    public static bool IsUnanswered(FoundDanger danger) => danger is { Finding: not null, AnsweredBy.Count: 0 };

    /// <summary>The defect answers an unsafe finding and is recorded lower than would be expected of it.</summary>
    public static bool IsRecordedLower(RecordedDefect defect, Finding finding) =>
        Answering.IsObserved(finding) && defect.Answers(finding) && (finding.ExpectedClass, defect.Defect.Class) is
            (ExpectedClass.ImmediatelyDangerous, DefectClass.AtRisk or DefectClass.Other) or (ExpectedClass.AtRisk, DefectClass.Other);

    /// <summary>Nothing is recorded as done about it.</summary>
    public static bool IsLeftAlone(RecordedDefect defect) => defect.Defect.Action is null or DefectAction.None;

    /// <summary>Advice on how the appliance burns and gets rid of its products.</summary>
    public static bool IsAdviceOnAirPath(Finding finding) =>
        finding.Outcome == Outcome.Advisory && finding.Topic is Topics.Combustion or Topics.Flue or Topics.Ventilation or Topics.AmbientAir;

    /// <summary>Within its limit, and an advisory only because the instrument cannot tell well enough: no defect of the appliance.</summary>
    public static bool IsOnlyUnsure(Finding finding, Visit visit) =>
        finding is { Margin: >= 0, Conformity: { } sure } && !visit.Limits[LimitIds.ConformityGuard].Allows(sure);
}
