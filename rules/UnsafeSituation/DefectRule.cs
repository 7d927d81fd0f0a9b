using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

/// <summary>A rule on the recorded defects that concern it. An empty list is a statement: none found.</summary>
[Expects("/defects")]
public abstract class DefectRule : ComplianceRule<Defect>
{
    protected sealed override IEnumerable<Subject<Defect>>? Subjects(Visit visit) => visit.Defects?.Where(defect => Concerns(defect.Value));

    protected virtual bool Concerns(Defect defect) => true;

    protected sealed override Verdict WhenNone(Visit visit, Look look) => look.NotApplicable($"no such defect is recorded");
}
