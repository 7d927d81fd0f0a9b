using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.RectifiedReexamined), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Title("A danger that was put right is looked at again, at a time within the visit")]
[Why("Work that was meant to cure a danger may not have cured it. Unless somebody looks again after the work, the record shows only that a danger was there.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.MayUnderReport, "what was seen at the second look is no member of its own")]
public sealed class RectifiedReexaminedRule : DefectRule
{
    protected override bool Concerns(Defect defect) =>
        defect is { Class: DefectClass.AtRisk or DefectClass.ImmediatelyDangerous, Action: DefectAction.Rectified };

    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        // What was measured again shows by itself whether the danger is gone: a test by its stage, a reading by its time.
        if (defect is { ReexaminedAt: null, Subject: { } subject } && subject.StartsWith("/tightnessTests", StringComparison.Ordinal))
            return look.NotApplicable($"a tightness test made again shows it");
        if (defect.ReexaminedAt is null && visit.Readings?.FirstOrDefault(reading => reading.Pointer == defect.Subject) is { Value: { } bad } found)
        {
            return bad.TakenAt is null
                ? look.Missing($"the bad reading does not say when it was taken, so that no later one takes it back", $"{found.Pointer}/takenAt")
                : look.NotApplicable($"a flue reading taken again shows it");
        }

        if (look.Lacks(defect.ReexaminedAt, out var again))
            return look.Missing($"the danger is recorded as put right, and not when it was looked at again");

        return again.Value > visit.Record.FinishedAt.Value || again.Value < visit.Record.StartedAt?.Value
            ? look.Missing($"the danger is recorded as looked at again at {again}, which is not within the visit", $"{look.Subject}/reexaminedAt")
            : look.Pass($"the danger was looked at again at {again}");
    }
}
