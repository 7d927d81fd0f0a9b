using Findings;
using Kernel;
using Rules.Duties;
using Rules.Paperwork;
using Visits;

namespace Rules.Jurisdictions.England;

[Id(RuleIds.NewBoilerInterlock), Topic(Topics.Paperwork), Cites("BUILDING-REGS-2010", "Part L")]
[Title("A new gas boiler in an existing dwelling stops when nothing asks for heat")]
[Why("Without an interlock a boiler keeps firing to heat its own pipework when no room or cylinder calls for it. The gas is wasted all year, and Part L guidance in England expects controls that stop it.")]
[Serves(Part.Commission)]
[AppliesBy("/commissioning/newBoiler"), InForce(From = "2018-04-06")]
[Coverage(Coverage.MayUnderReport, "time and temperature control are no members")]
public sealed class NewBoilerInterlockRule : NewBoilerRule
{
    protected override string SubjectPointer => "/commissioning/interlock";

    protected override bool IsLawHere(Visit visit) => visit.Record.Jurisdiction == Codes.England;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Commissioning?.Interlock, out var isThere))
            return look.Missing();

        return isThere
            ? look.Pass($"the controls stop the boiler when nothing asks for heat")
            : look.Advisory($"the new boiler has no interlock, so it may run when nothing asks for heat")
                .Advise("Wire the controls so that the boiler stops when no room and no cylinder asks for heat.");
    }
}
