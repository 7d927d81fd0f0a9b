using Findings;
using Kernel;
using Rules.Paperwork;
using Visits;

namespace Rules.Jurisdictions.England;

[Id(RuleIds.NewBoilerDesignFlow), Topic(Topics.Paperwork), Cites("BUILDING-REGS-2010", "Part L")]
[Title("A new or wholly replaced heating system is designed for a flow of at most 55 degrees where that is feasible")]
[Why("A boiler condenses only when water comes back cool enough, and small radiators run hot prevent it. Part L guidance in England looks for a low design flow in a new system, while radiators can still be sized for it.")]
[Serves(Part.CommissionPaper)]
[Uses(LimitIds.NewBoilerDesignFlow)]
[AppliesBy("/commissioning/newBoiler"), InForce(From = "2022-06-15")]
[Coverage(Coverage.MayOverReport, "where it is not feasible a warmer flow may stand")]
public sealed class NewBoilerDesignFlowRule : NewBoilerRule
{
    protected override string SubjectPointer => "/commissioning/designFlowC";

    protected override bool IsLawHere(Visit visit) => visit.Record.Jurisdiction == Codes.England;

    // The record does not say whether the whole system is new: never more than advice.
    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Commissioning?.DesignFlowC) is not { } flow)
            return look.Advisory($"no design flow temperature is recorded with the new boiler")
                .Advise("Record the flow temperature for which the system is designed.");

        var limit = visit.Limits[LimitIds.NewBoilerDesignFlow];
        return limit.Allows(flow)
            ? look.Pass($"the system is designed for a flow of {flow} C, at most {limit.Max} C").Against(limit, flow)
            : look.Advisory($"the system is designed for a flow of {flow} C; a new or wholly replaced one goes to at most {limit.Max} C where feasible")
                .Against(limit, flow)
                .Advise("Where the whole system is new, size it for a lower flow temperature or record why that is not feasible.");
    }
}
