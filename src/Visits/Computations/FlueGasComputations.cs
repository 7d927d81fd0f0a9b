using Calculations;
using Kernel;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>Algebra of dry flue-gas readings.</summary>
public static class FlueGasComputations
{
    private static readonly ComputationInput Co = Within("coPpm", "[ppm]", 0, 1_000_000, 96, "CO in dry flue gas");
    private static readonly ComputationInput Co2 = Within("co2Percent", "%", 0.0001m, 100, 9.2m, "CO2 in dry flue gas");
    private static readonly ComputationInput Co2OfFuel = Within("co2Percent", "%", 0.0001m, 15, 9.2m, "CO2 in dry flue gas, at most what the fuel gives without excess air");
    private static readonly ComputationInput O2 = Within("o2Percent", "%", 0, 20.89m, 4.5m, "O2 in dry flue gas, below that of air");

    /// <summary>The CO/CO2 ratio.</summary>
    public static readonly Computation CoCo2Ratio = new()
    {
        Name = "coCo2Ratio",
        What = "CO/CO2 ratio of the flue gas; dilution with air leaves it unchanged",
        Inputs = [Co, Co2],
        Unit = "1",
        Template = "{coPpm} / ({co2Percent} x 10000)",
        Source = "BS 7967, definition of the CO/CO2 ratio",
        Exact = v => FlueGas.Ratio(v.Exact("coPpm"), v.Exact("co2Percent")),
    };

    /// <summary>CO without excess air, from O2.</summary>
    public static readonly Computation CoAirFree = new()
    {
        Name = "coAirFree",
        What = "CO referred to flue gas without excess air, from O2",
        Inputs = [Co, O2, Within("o2InAirPercent", "%", 20.9m, 22, 20.9m, "oxygen in dry air") with { Default = OxygenInAir.FieldPercent }],
        Unit = "[ppm]",
        Template = "{coPpm} x {o2InAirPercent} / ({o2InAirPercent} - {o2Percent})",
        Source = "form of 40 CFR part 60; 20.9 % oxygen in air by custom",
        Exact = v => FlueGas.CoAirFreePpm(v.Exact("coPpm"), v.Exact("o2Percent"), v.Exact("o2InAirPercent")),
    };

    /// <summary>CO without excess air, from CO2.</summary>
    public static readonly Computation CoAirFreeFromCo2 = new()
    {
        Name = "coAirFreeFromCo2",
        What = "CO referred to flue gas without excess air, from CO2",
        Inputs = [Fuel, Co, Co2OfFuel],
        Unit = "[ppm]",
        Template = "{coPpm} x CO2max of {fuel} / {co2Percent}",
        Source = "form of the European boiler standards (from memory); CO2max by stoichiometry with 20.95 % oxygen in air",
        Constants = Co2Max,
        Demands = [Co2WithinFuel],
        Exact = v => FlueGas.CoAirFreeFromCo2Ppm(v.Exact("coPpm"), v.Exact("co2Percent"), v.Gas()),
    };

    /// <summary>The CO2 that an O2 reading implies.</summary>
    public static readonly Computation Co2FromO2 = new()
    {
        Name = "co2FromO2",
        What = "CO2 that goes with an O2 reading of this fuel",
        Inputs = [Fuel, O2],
        Unit = "%",
        Template = "CO2max of {fuel} x (20.95 - {o2Percent}) / 20.95",
        Source = "stoichiometry of complete combustion, 20.95 % oxygen in air",
        Constants = Co2Max,
        Exact = v => FlueGas.Co2FromO2Percent(v.Exact("o2Percent"), v.Gas(), OxygenInAir.PhysicalPercent),
    };

    /// <summary>The O2 that a CO2 reading implies.</summary>
    public static readonly Computation O2FromCo2 = new()
    {
        Name = "o2FromCo2",
        What = "O2 that goes with a CO2 reading of this fuel",
        Inputs = [Fuel, Co2OfFuel],
        Unit = "%",
        Template = "20.95 x (CO2max of {fuel} - {co2Percent}) / CO2max",
        Source = "stoichiometry of complete combustion, 20.95 % oxygen in air",
        Constants = Co2Max,
        Demands = [Co2WithinFuel],
        Exact = v => FlueGas.O2FromCo2Percent(v.Exact("co2Percent"), v.Gas(), OxygenInAir.PhysicalPercent),
    };

    /// <summary>How far a pair of readings is from the fuel.</summary>
    public static readonly Computation Co2Deviation = new()
    {
        Name = "co2DeviationFromO2",
        What = "CO2 as read less the CO2 that the O2 reading implies: far from 0, a reading is wrong, air leaked in, or the analyser was set to another fuel",
        Inputs = [Fuel, O2, Co2],
        Unit = "%",
        Template = "{co2Percent} - CO2max of {fuel} x (20.95 - {o2Percent}) / 20.95",
        Source = "stoichiometry of complete combustion, 20.95 % oxygen in air",
        Constants = Co2Max,
        Exact = v => v.Exact("co2Percent") - FlueGas.Co2FromO2Percent(v.Exact("o2Percent"), v.Gas(), OxygenInAir.PhysicalPercent),
    };

    /// <summary>The fuel factor of a pair of readings.</summary>
    public static readonly Computation FuelFactor = new()
    {
        Name = "fuelFactor",
        What = "fuel factor of a pair of readings, about 1.79 for natural gas, 1.52 for propane, 1.49 for butane",
        Inputs = [O2, Within("co2Percent", "%", 0.0001m, 25, 9.2m, "CO2 in dry flue gas"), Within("coPpm", "[ppm]", 0, 100_000, 96, "CO in dry flue gas") with { Default = 0m }],
        Unit = "1",
        Template = "(20.9 - ({o2Percent} - CO/2)) / ({co2Percent} + CO), CO = {coPpm} / 10000",
        Source = "40 CFR part 60 appendix A, method 3B",
        Exact = v => FlueGas.FuelFactor(v.Exact("o2Percent"), v.Exact("co2Percent"), v.Exact("coPpm"), OxygenInAir.FieldPercent),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } = [CoCo2Ratio, CoAirFree, CoAirFreeFromCo2, Co2FromO2, O2FromCo2, Co2Deviation, FuelFactor];

    private static (string, string, Func<InputValues, bool>) Co2WithinFuel =>
        ("co2Percent", "must be at most the CO2max of the fuel", v => v.Exact("co2Percent") <= v.Gas().Co2MaxPercent());

    private static IReadOnlyList<string> Co2Max(InputValues v) => [$"CO2max = {WireText.Of(v.Gas().Co2MaxPercent())} %"];
}
