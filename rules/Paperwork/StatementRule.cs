using Kernel;
using Visits;

namespace Rules.Paperwork;

/// <summary>A rule that the paper carries something. Absent: asked. Stated as absent from the paper: advice, unless the rule says more.</summary>
public abstract class StatementRule : VisitRule
{
    protected sealed override string SubjectPointer => "/paperwork";

    protected static Verdict Stated(bool isThere, string what, Look look) => isThere
        ? look.Pass($"the paper carries {what}")
        : look.Advisory($"by the record the paper does not carry {what}")
            .Advise("Complete the paper and give the corrected copy to those who got the first.");
}
