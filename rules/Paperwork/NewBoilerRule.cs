using Visits;

namespace Rules.Paperwork;

/// <summary>A rule of the building regulations on a new or replacement boiler.</summary>
public abstract class NewBoilerRule : VisitRule
{
    protected sealed override bool? Applies(Visit visit) => IsLawHere(visit) & visit.IsNewBoiler;

    /// <summary>Does the law of the place and the day know this demand?</summary>
    protected abstract bool IsLawHere(Visit visit);
}
