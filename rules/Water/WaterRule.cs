using Visits;

namespace Rules.Water;

/// <summary>A rule on the water side.</summary>
public abstract class WaterRule : VisitRule
{
    protected override string SubjectPointer => "/water";
}
