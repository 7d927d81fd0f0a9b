using System.Collections.Immutable;
using Calculations;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>Excess air, flue loss, efficiency, dew point and condensate by an exact balance over the flue gas.</summary>
public static class FlueLossComputations
{
    private const double HighestRatio = 10;
    private const string Balance = "energy balance over the flue gas (NASA polynomials, ISO 6976:2016 calorific values at 25 Cel), saturated where it condenses, no casing loss: an upper bound";
    private const string AtFlue = ", from {fuel:}, {o2Percent:}, {co2Percent:}, {flueTemperatureC:} and {airTemperatureC:}";

    private static readonly CombustionAir Air = CombustionAir.Of((double)OxygenInAir.PhysicalPercent);

    private static readonly ComputationInput O2 =
        Within("o2Percent", "%", 0, 20.89m, 4.5m, "O2 in dry flue gas; this or co2Percent") with { IsOptional = true };
    private static readonly ComputationInput Co2 =
        Within("co2Percent", "%", 0.0001m, 15, 9.2m, "CO2 in dry flue gas, where O2 is not given") with { IsOptional = true };
    private static readonly ComputationInput Flue = Within("flueTemperatureC", "Cel", 5, 370, 60, "flue temperature");
    private static readonly ComputationInput AirC = Within("airTemperatureC", "Cel", -20, 50, 18, "temperature of the combustion air, at most the flue's");

    private static readonly ImmutableArray<(string, string, Func<InputValues, bool>)> OneReading =
    [
        ("o2Percent", "or 'co2Percent' must be given, and not both", v => v.Has("o2Percent") != v.Has("co2Percent")),
        ("co2Percent", "must be at most the CO2max of the fuel", v => v.Has("o2Percent") || !v.Has("co2Percent") || v.Real("co2Percent") <= Stoichiometry.Co2MaxPercent(FuelGas.Of(v.Gas()), Air)),
    ];

    private static readonly ImmutableArray<(string, string, Func<InputValues, bool>)> OneReadingAndWarmFlue =
    [
        .. OneReading,
        ("airTemperatureC", "must be at most the flue temperature", v => v.Exact("airTemperatureC") <= v.Exact("flueTemperatureC")),
    ];

    /// <summary>Excess air.</summary>
    public static readonly Computation ExcessAir = new()
    {
        Name = "excessAir",
        What = "air supplied beyond what the fuel needs, exact",
        Inputs = [Fuel, O2, Co2],
        Unit = "%",
        Template = "100 x (air supplied / air needed - 1), from {fuel:}, {o2Percent:} and {co2Percent:}",
        Source = "stoichiometry of the reference gas of EN 437, dry air",
        Constants = OfAir,
        Demands = Limited(OneReading),
        Real = v => 100 * (Ratio(v) - 1),
    };

    /// <summary>Flue loss.</summary>
    public static readonly Computation FlueLossNet = OfBalance("flueLossNet", "heat that leaves with the flue gas, of the net heat input; negative where more is regained by condensing than leaves",
        "100 - efficiency on net calorific value", "%", balance => 100 - balance.NetPercent);

    /// <summary>Efficiency on net calorific value.</summary>
    public static readonly Computation EfficiencyNet = OfBalance("efficiencyNet", "combustion efficiency on net calorific value; above 100 where enough water condenses",
        "100 - sensible loss + heat regained by condensing, of net heat input", "%", balance => balance.NetPercent);

    /// <summary>Flue loss on gross calorific value.</summary>
    public static readonly Computation FlueLossGross = OfBalance("flueLossGross", "heat that leaves with the flue gas, of the gross heat input",
        "100 - efficiency on gross calorific value", "%", balance => 100 - balance.GrossPercent);

    /// <summary>Efficiency on gross calorific value.</summary>
    public static readonly Computation EfficiencyGross = OfBalance("efficiencyGross", "combustion efficiency on gross calorific value",
        "efficiency on net calorific value / (gross / net calorific value)", "%", balance => balance.GrossPercent);

    /// <summary>Condensate for each kWh.</summary>
    public static readonly Computation CondensatePerKwh = OfBalance("condensatePerKwh", "water that condenses for each kWh of gross heat input",
        "water formed less the vapour that saturated flue gas carries, for each kWh of gross heat input", "kg/(kW.h)", balance => balance.CondensateKgPerKwhGross);

    /// <summary>Condensate in an hour.</summary>
    public static readonly Computation CondensateRate = new()
    {
        Name = "condensateRate",
        What = "water that condenses in an hour",
        Inputs = [Fuel, O2, Co2, Flue, AirC, Within("heatInputGrossKw", "kW", 0, 100_000, 28.8m, "gross heat input")],
        Unit = "kg/h",
        Template = "{heatInputGrossKw} x condensate for each kWh" + AtFlue,
        Source = Balance,
        Constants = OfAir,
        Demands = Limited(OneReadingAndWarmFlue),
        Real = v => BalanceOf(v).CondensateKgPerHour(v.Real("heatInputGrossKw")),
    };

    /// <summary>Dew point.</summary>
    public static readonly Computation FlueDewPoint = new()
    {
        Name = "flueDewPoint",
        What = "temperature at which water begins to condense from the flue gas; humid air lifts it by about 1 to 1.5 K",
        Inputs = [Fuel, O2, Co2],
        Unit = "Cel",
        Template = "saturation temperature at the partial pressure of water in the flue gas, from {fuel:}, {o2Percent:} and {co2Percent:}",
        Source = "vapour-pressure equation of Wagner and Pruss (2002); stoichiometry of the reference gas of EN 437",
        Constants = v => [.. OfAir(v), "pressure = 101325 Pa"],
        Demands = Limited(OneReading),
        Real = v => DewPoint.OfFlueGasC(Stoichiometry.Burn(FuelGas.Of(v.Gas()), Air, Ratio(v))),
    };

    /// <summary>The short formula that many analysers use.</summary>
    public static readonly Computation SiegertLoss = new()
    {
        Name = "siegertLoss",
        What = "flue loss by the Siegert formula, of the net heat input; dry flue gas only",
        Inputs = [Fuel, Within("o2Percent", "%", 0, 18, 5, "O2 in dry flue gas"), Within("flueTemperatureC", "Cel", -20, 400, 160, "flue temperature"), AirC],
        Unit = "%",
        Template = "({flueTemperatureC} - {airTemperatureC}) x (A2 of {fuel} / (21 - {o2Percent}) + B)",
        Source = "Siegert formula; A2 and B from memory",
        Demands = [OneReadingAndWarmFlue[^1]],
        Real = v => FlueLoss.SiegertFromO2Percent(v.Real("flueTemperatureC"), v.Real("airTemperatureC"), v.Real("o2Percent"), v.Gas(), (double)OxygenInAir.SiegertPercent),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } =
        [ExcessAir, FlueLossNet, EfficiencyNet, FlueLossGross, EfficiencyGross, CondensatePerKwh, CondensateRate, FlueDewPoint, SiegertLoss];

    private static Computation OfBalance(string name, string what, string formula, string unit, Func<FlueEfficiency, double> pick) => new()
    {
        Name = name,
        What = what,
        Inputs = [Fuel, O2, Co2, Flue, AirC],
        Unit = unit,
        Template = formula + AtFlue,
        Source = Balance,
        Constants = OfAir,
        Demands = Limited(OneReadingAndWarmFlue),
        Real = v => pick(BalanceOf(v)),
    };

    // The ratio can only be worked out once the demands before it hold.
    private static ImmutableArray<(string, string, Func<InputValues, bool>)> Limited(ImmutableArray<(string Input, string Demand, Func<InputValues, bool> Holds)> demands) =>
        [.. demands, ("o2Percent", "or 'co2Percent' means more than ten times the air needed", v => demands.Any(demand => !demand.Holds(v)) || Ratio(v) <= HighestRatio)];

    private static FlueEfficiency BalanceOf(InputValues v) =>
        FlueBalance.Of(FuelGas.Of(v.Gas()), Air, Ratio(v), v.Real("flueTemperatureC"), v.Real("airTemperatureC"));

    private static double Ratio(InputValues v) => v.Has("o2Percent")
        ? Stoichiometry.ExcessAirRatioFromO2(FuelGas.Of(v.Gas()), Air, v.Real("o2Percent"))
        : Stoichiometry.ExcessAirRatioFromCo2(FuelGas.Of(v.Gas()), Air, v.Real("co2Percent"));

    private static IReadOnlyList<string> OfAir(InputValues v) => ["oxygen in air = 20.95 %", "water vapour in air = 0 %"];
}
