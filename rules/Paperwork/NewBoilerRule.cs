using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>A rule of the building regulations on a new or replacement boiler. A plain service is none; a visit that records a commissioning has to say.</summary>
public abstract class NewBoilerRule : VisitRule
{
    protected sealed override bool? Applies(Visit visit) =>
        IsLawHere(visit) & (visit.Record.Commissioning?.NewBoiler ?? (visit.Record.JobType == JobType.Commissioning || visit.Record.Commissioning is not null ? null : false));

    /// <summary>Does the law of the place and the day know this demand?</summary>
    protected abstract bool IsLawHere(Visit visit);
}
