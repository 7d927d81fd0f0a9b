using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

/// <summary>A rule on each defect that the engineer classed as dangerous. One without a class is asked for it.</summary>
public abstract class DangerousDefectRule : DefectRule
{
    protected override bool Concerns(Defect defect) => defect.Class != DefectClass.Other;

    protected sealed override Verdict Assess(Defect defect, Visit visit, Look look) =>
        look.Lacks(defect.Class, out var classed) ? look.Missing($"the defect is not classed") : Judge(defect, classed, visit, look);

    protected abstract Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look);
}

/// <summary>A rule on each dangerous defect that was not put right.</summary>
public abstract class StandingDangerRule : DangerousDefectRule
{
    protected sealed override bool Concerns(Defect defect) => base.Concerns(defect) && defect.Action != DefectAction.Rectified;
}
