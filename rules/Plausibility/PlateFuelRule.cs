using Findings;
using Kernel;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.PlateFuel), Topic(Topics.Plausibility), Cites("GSIUR-1998", "5(1)"), Cites("GSIUR-1998", "26(7)")]
[Title("The appliance burns the gas for which its data plate says it is made or converted")]
[Why("Supplied with a gas it was not set for, a burner overfires or starves and can make carbon monoxide (CO) in quantity. The next engineer sets it up from the data plate, so a plate that is wrong repeats the fault.")]
[Serves(Part.Plate, AtMost = Weight.Should)]
[Coverage(Coverage.Full, "two members are compared")]
public sealed class PlateFuelRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/plateFuel";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Appliance.Fuel, out var fuel) | look.Lacks(visit.Record.Appliance.PlateFuel, out var plate))
            return look.Missing();
        if (plate == fuel)
            return look.Pass($"the data plate says {plate}, and that is what the appliance burns");

        // Whoever converts it changes the plate on the same visit: until then the next engineer sets it for the wrong gas.
        return (visit.Record.PartsFitted?.Any(part => part.ForFuel == fuel) == true
            ? look.Unsafe($"the appliance burns {fuel}, parts for {fuel} were fitted on this visit, and its data plate still says {plate}")
            : look.Unsafe($"the appliance burns {fuel}, its data plate says {plate}, and no part for {fuel} is recorded"))
            .Warn(Cautions.CarbonMonoxide)
            .Advise("Do not leave the boiler in use. Find out whether it was converted with the maker's parts and set by the maker's instructions, and fix the plate that the maker supplies with the conversion.");
    }
}
