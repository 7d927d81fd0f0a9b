using Findings;
using Kernel;
using Visits;

namespace Rules.Jurisdictions.England;

[Topic(Topics.Paperwork)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.NewBoilerInterlock), Cites("BUILDING-REGS-2010", "Part L")]
    [Title("A new gas boiler in an existing dwelling stops when nothing asks for heat")]
    [Why("Without an interlock a boiler keeps firing to heat its own pipework when no room or cylinder calls for it. The gas is wasted all year, and Part L guidance in England expects controls that stop it.")]
    [Serves(Part.Commission)]
    [AppliesBy("/commissioning/newBoiler"), InForce(From = "2018-04-06")]
    [Coverage(Coverage.MayUnderReport, "time and temperature control are no members")]
    public Statement NewBoilerInterlock => Ask(
        visit => visit.Record.Commissioning?.Interlock, aboutItself: true,
        applies: visit => visit.Record.Jurisdiction == Codes.England & visit.IsNewBoiler,
        yes: Pass("the controls stop the boiler when nothing asks for heat"),
        no: Advisory("the new boiler has no interlock, so it may run when nothing asks for heat",
            advise: "Wire the controls so that the boiler stops when no room and no cylinder asks for heat."));
}
