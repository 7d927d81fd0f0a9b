using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Ventilation;

[Topic(Topics.Ventilation)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.AirSupplyExamined), Cites("GSIUR-1998", "26(9)(b)")]
    [Title("The supply of combustion air is examined after any work and is clear")]
    [Why("Starved of air, a burner soots up and makes carbon monoxide (CO). Leaves, a nest or loft insulation can choke the intake between services, and regulation 26(9) has the supply of combustion air examined after any work.")]
    [Serves(Part.Air)]
    [Uses(LimitIds.AmbientCo)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement AirSupplyExamined => Ask(
        visit => visit.Record.Ventilation?.AirInletClear,
        yes: Pass("the air inlet of the boiler is clear"),
        no: Unsafe("the air inlet of the boiler is not clear", expected: RoomAir.ClassOfEscapingProducts,
            warn: Cautions.CarbonMonoxide, advise: "Clear the air inlet, then read the flue again."));

    [Id(RuleIds.CompartmentVentLabel), Cites("BS-5440", "2")]
    [Title("The vents of a boiler compartment carry a notice against blocking")]
    [Why("Boiler cupboards fill up with coats and boxes, and decorators paint vents shut. A notice on the vent reaches whoever is about to cover it, long after the person the engineer spoke to has moved out.")]
    [Serves(Part.Air, AtMost = Weight.Should)]
    [AppliesBy("/ventilation/compartment", "/appliance/flueType", "/appliance/condensing")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement CompartmentVentLabel => Ask(
        visit => visit.Record.Ventilation?.Labelled, applies: visit => visit.NeedsCompartmentVents(),
        yes: Pass("the vents of the compartment are labelled"),
        no: Advisory("the vents of the compartment carry no notice against blocking",
            advise: "Fix a notice that the vents must not be blocked."));
}
