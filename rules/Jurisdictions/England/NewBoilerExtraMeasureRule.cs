using Findings;
using Kernel;
using Rules.Paperwork;
using Visits;

namespace Rules.Jurisdictions.England;

[Id(RuleIds.NewBoilerExtraMeasure), Topic(Topics.Paperwork), Cites("BUILDING-REGS-2010", "Part L")]
[Title("With a new combination boiler in an existing dwelling one further energy measure is fitted")]
[Why("Combination boilers on plain controls tend to run hotter and longer than the house needs. For existing homes in England Part L guidance asks for one more energy measure, and the time to fit it is with the boiler.")]
[Serves(Part.CommissionPaper)]
[AppliesBy("/commissioning/newBoiler"), InForce(From = "2018-04-06")]
[Coverage(Coverage.MayOverReport, "whether it is a combination boiler is no member")]
public sealed class NewBoilerExtraMeasureRule : NewBoilerRule
{
    protected override string SubjectPointer => "/commissioning/extraMeasure";

    protected override bool IsLawHere(Visit visit) => visit.Record.Jurisdiction == Codes.England;

    // The record does not say whether the boiler is a combination boiler, so an absent measure is no gap by itself.
    protected override Verdict Assess(Visit visit, Look look) => look.Note(visit.Record.Commissioning?.ExtraMeasure) is { } measure
        ? look.Pass($"a further energy measure is recorded: {measure}")
        : look.Advisory($"no further energy measure is recorded; a combination boiler needs one")
            .Advise("With a combination boiler fit heat recovery, weather or load compensation, or a controller with automation and optimisation, and record it.");
}
