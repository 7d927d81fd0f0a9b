using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Water;

[Topic(Topics.Water)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.ReliefDischarge), Cites("BS-6798"), CommonPractice]
    [Title("The relief valve discharges where it can scald nobody")]
    [Why("Relief valves lift without warning and let out water that can be near boiling. A discharge over a path, in a cupboard or at face height scalds whoever happens to be there.")]
    [Serves(Part.ReliefValve, AtMost = Weight.Should)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement ReliefDischarge => Ask(
        visit => visit.Record.Water?.ReliefDischargeSafe, aboutItself: true,
        // Looked for at a service; a fault that somebody recorded is judged at any visit.
        yes: Pass("the relief valve is recorded as discharging where it hurts nobody"),
        no: Unsafe("the relief valve discharges where it can scald somebody",
            warn: Cautions.HotWater, advise: "Run the discharge in metal pipe of the valve's size, falling all the way, to a low visible place outdoors against the wall."));

    [Id(RuleIds.FillingLoopDisconnected), CommonPractice]
    [Title("The filling loop is left disconnected")]
    [Why("Joined to the mains, heating water with its chemicals and dirt can find its way back into the drinking supply. A loop valve that lets by also raises the system pressure until the relief valve lifts.")]
    [Serves(Part.FillingLoop)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement FillingLoopDisconnected => Ask(
        visit => visit.Record.Water?.FillingLoopDisconnected, aboutItself: true, applies: visit => visit.IsMoreThanALandlordCheck,
        yes: Pass("the filling loop was left disconnected"),
        no: Advisory("the filling loop was left connected: it can overfill the system and foul the drinking water",
            advise: "Disconnect the filling loop and cap both ends.",
            asks: visit => visit.AskedUnlessADefect("/water/fillingLoopDisconnected", "/water/fillingLoopDisconnected", Topics.Water)));

    [Id(RuleIds.FilterCleaned), Cites("BS-7593"), CommonPractice]
    [Title("The filter of the heating system is cleaned at each service")]
    [Why("Sludge and magnetite build up in a filter until it slows the flow or stops catching dirt. Emptying it at each service protects the heat exchanger and shows how fast the system is corroding.")]
    [Serves(Part.Water)]
    [InForce(From = "2019-06-01")]
    [Coverage(Coverage.MayOverReport, "a system without a filter is advised about as well")]
    public Statement FilterCleaned => Ask(
        visit => visit.Record.Water?.FilterCleaned, aboutItself: true, applies: visit => visit.IsMoreThanALandlordCheck || visit.IsOwedFromBefore(Part.Water),
        yes: Pass("the system filter was cleaned"),
        no: Advisory("the system filter was not cleaned, or there is none",
            advise: "Clean the filter, or propose one where none is fitted."));

    [Id(RuleIds.VentAndFeedOpen), CommonPractice]
    [Title("The open vent and the cold feed of an open-vented system are clear")]
    [Why("An open vent is the only way out for steam when a control sticks, and the cold feed the only way in for water. With both blocked by ice, scale or a valve, a boiler that goes on firing can burst.")]
    [Serves(Part.Water, AtMost = Weight.Should)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement VentAndFeedOpen => Ask(
        visit => visit.Record.Water?.VentAndFeedOpen, aboutItself: true,
        // A system that nobody states is taken for a sealed one; a fault that somebody recorded is judged on any.
        applies: visit => visit.IsOpenVented() || visit.Record.Water?.VentAndFeedOpen == false,
        yes: Pass("the open vent and the cold feed are clear"),
        // From memory: a boiler that cannot vent can burst.
        no: Unsafe("the open vent or the cold feed is not clear: the boiler can burst",
            warn: Cautions.HotWater, advise: "Turn the boiler off with permission until vent and feed are clear from end to end."));
}
