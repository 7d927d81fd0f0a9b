using Findings;
using Kernel;
using Visits;

namespace Rules.GasPressure;

[Topic(Topics.GasPressure)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.ShutOffAtInlet), Cites("GSIUR-1998", "26(6)")]
    [Title("The gas to a new boiler can be shut off at its inlet")]
    [Why("In an emergency, and for every later repair, the boiler's gas has to be shut off without leaving the whole house without. Regulation 26(6) asks for it wherever it can reasonably be had.")]
    [Serves(Part.Commission)]
    [AppliesBy("/commissioning/newBoiler")]
    [Coverage(Coverage.MayOverReport, "the regulation excepts what is not reasonably practicable, which the record does not hold")]
    public Statement ShutOffAtInlet => Ask(
        visit => visit.Record.Appliance.ShutOffAtInlet, aboutItself: true, applies: visit => visit.IsNewBoiler,
        yes: Pass("the gas to the new boiler can be shut off at its inlet"),
        no: Missing("the gas to the new boiler cannot be shut off at its inlet",
            warn: Cautions.EscapingGas, advise: "Fit a valve at the inlet of the boiler and test the joints that were made."));
}
