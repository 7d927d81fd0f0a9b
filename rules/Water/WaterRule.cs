using Visits;

namespace Rules.Water;

/// <summary>A rule on the water side: part of any visit but a bare landlord check.</summary>
public abstract class WaterRule : VisitRule
{
    protected override string SubjectPointer => "/water";

    protected override bool? Applies(Visit visit) => visit.IsMoreThanALandlordCheck;
}
