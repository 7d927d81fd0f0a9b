using Findings;
using Kernel;
using Rules.Paperwork;
using Visits;

namespace Rules.Jurisdictions.England;

[Id(RuleIds.NewBoilerEfficiency), Topic(Topics.Paperwork), Cites("BUILDING-REGS-2010", "Part L")]
[Title("A new gas boiler in an existing dwelling has a seasonal efficiency of at least 92 %")]
[Why("Every point of efficiency lost is gas burned for nothing through the whole life of the boiler. The guidance to Part L in England sets a floor, and what is fitted today will not soon be changed.")]
[Serves(Part.Commission)]
[Uses(LimitIds.NewBoilerEfficiency)]
[AppliesBy("/commissioning/newBoiler"), InForce(From = "2018-04-06")]
[Coverage(Coverage.Full, "the figure is recorded")]
public sealed class NewBoilerEfficiencyRule : NewBoilerRule
{
    protected override string SubjectPointer => "/commissioning/seasonalEfficiencyPercent";

    protected override bool IsLawHere(Visit visit) => visit.Record.Jurisdiction == Codes.England;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Commissioning?.SeasonalEfficiencyPercent, out var efficiency))
            return look.Missing();

        var limit = visit.Limits[LimitIds.NewBoilerEfficiency];
        return limit.Allows(efficiency)
            ? look.Pass($"the seasonal efficiency is {efficiency} %, at least {limit.Min} %").Against(limit, efficiency)
            : look.Advisory($"the seasonal efficiency is {efficiency} %, and at least {limit.Min} % is asked of a new boiler in an existing dwelling")
                .AndMissing(string.IsNullOrWhiteSpace(look.Note(visit.Record.Commissioning?.ExceptionalCircumstance)) ? ["/commissioning/exceptionalCircumstance"] : [])
                .Against(limit, efficiency)
                .Advise("Check the product label; where the boiler falls short, tell building control and the customer.");
    }
}
