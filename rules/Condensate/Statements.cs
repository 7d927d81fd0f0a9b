using Findings;
using Kernel;
using Visits;

namespace Rules.Condensate;

[Topic(Topics.Condensate)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.TrapCleaned), Cites("BS-6798")]
    [Title("The condensate trap is cleaned at each annual service")]
    [Why("Debris washed out of the heat exchanger settles in the trap and blocks it. Condensate then backs up into the boiler, which gurgles, locks out or floods its own combustion chamber.")]
    [Serves(Part.Trap, AtMost = Weight.Should)]
    [Serves(Part.TrapOfService, AtMost = Weight.Should)]
    [AppliesBy("/appliance/condensing")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement TrapCleaned => Ask(
        visit => visit.Record.Condensate?.TrapCleaned, applies: visit => visit.IsAnnualService & visit.Appliance.Condensing,
        yes: Pass("the condensate trap was cleaned"),
        no: Advisory("the condensate trap was not cleaned",
            advise: "Clean the trap after the debris is out of the heat exchanger, and refill it."));

    [Id(RuleIds.CondensateRunning), CommonPractice]
    [Title("Condensate is seen running to the drain")]
    [Why("Seeing condensate reach the drain shows that trap, pipe and connection are all open. A blockage left behind can send acidic water back into the boiler and bring a call-out.")]
    [Serves(Part.Condensate)]
    [AppliesBy("/appliance/condensing")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement CondensateRunning => Ask(
        visit => visit.Record.Condensate?.SeenRunning, applies: visit => visit.Appliance.Condensing,
        yes: Pass("condensate was seen running"),
        no: Advisory("condensate was not seen running",
            advise: "Run the boiler until condensate flows, and follow it to the drain."));
}
