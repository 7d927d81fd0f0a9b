using Findings;
using Kernel;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ApplianceModified), Topic(Topics.Plausibility), Cites("GSIUR-1998", "26(7)")]
[Title("The appliance is in its approved state")]
[Why("Approval covers the boiler as it was designed and tested, and nobody has tested the changed one. Regulation 26(7) has work on such an appliance leave it in its approved state.")]
[Serves(Part.Plate, AtMost = Weight.Should)]
[Coverage(Coverage.MayUnderReport, "what a modification does is for the person on site")]
public sealed class ApplianceModifiedRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/modified";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Appliance.Modified, out var isModified))
            return look.Missing();
        if (!isModified)
            return look.Pass($"the appliance is recorded as not modified");

        return look.Note(visit.Record.MakerLimits?.DecisionReference) is { } reference
            ? look.Advisory($"the appliance was modified, and the maker decided on it under {reference}").Warn(Cautions.MakerDecides)
            : look.Unsafe($"the appliance was modified, and no decision of the maker is on record")
                .Warn(Cautions.MakerDecides).Advise("Do not leave the boiler in use until it is back in its approved state or the maker has decided on the change.");
    }
}
