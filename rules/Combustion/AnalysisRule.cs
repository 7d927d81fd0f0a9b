using Kernel;
using Visits;

namespace Rules.Combustion;

/// <summary>
/// A rule on how the combustion analysis was made. While products reach the air inlet the analysis counts for nothing, and none of
/// these rules may say that it is in order.
/// </summary>
public abstract class AnalysisRule : VisitRule
{
    protected override string SubjectPointer => "/combustion";

    protected sealed override Verdict Assess(Visit visit, Look look) => visit.ProductsReachTheAirInlet()
        ? look.Missing($"products reach the air inlet, so the combustion analysis does not count", "/combustion/airInlet")
        : Judge(visit, look);

    protected abstract Verdict Judge(Visit visit, Look look);
}
