using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.PartForThisGas), Topic(Topics.GasPressure), Cites("GSIUR-1998", "5(1)")]
[Title("A part that was fitted is made for the gas that the appliance burns")]
[Why("Natural gas and LPG need injectors of different sizes, so a part for the wrong gas feeds far too much or too little. The flame then soots, lifts or makes CO, and regulation 5 calls for fittings of a type right for the gas.")]
[Serves(Part.Parts)]
[Expects("/partsFitted")]
[Coverage(Coverage.MayUnderReport, "soundness, strength and size of a part are no members")]
public sealed class PartForThisGasRule : ComplianceRule<FittedPart>
{
    protected override IEnumerable<Subject<FittedPart>>? Subjects(Visit visit) =>
        Kernel.Subjects.Of("/partsFitted", visit.Record.PartsFitted);

    protected override Verdict Assess(FittedPart part, Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Appliance.Fuel, out var fuel))
            return look.Missing();
        if (look.Note(part.ForFuel) is null && !MayCarryGas(part))
            return look.NotApplicable($"a part of this kind carries no gas");
        if (look.Lacks(part.ForFuel, out var made))
            return look.Missing($"the record does not say for which gas the part is made");

        return made == fuel
            ? look.Pass($"the part is made for {made}")
            : look.Unsafe($"a part made for {made} was fitted to an appliance that burns {fuel}").Warn(Cautions.CarbonMonoxide)
                .Advise("Do not leave the appliance in use. Fit the maker's part for this gas, then measure pressure, rate and combustion again.");
    }

    // A kind that is not recorded may be any.
    private static bool MayCarryGas(FittedPart part) =>
        part.Kind is null or PartKind.GasValve or PartKind.Injector or PartKind.Burner or PartKind.GasSeal or PartKind.Regulator or PartKind.Other;
}
