using Calculations;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>Heat to the water and the state of the heat exchanger.</summary>
public static class WaterComputations
{
    private static readonly ComputationInput Flow = Within("flowTemperatureC", "Cel", 5, 110, 65, "flow temperature");
    private static readonly ComputationInput Return = Within("returnTemperatureC", "Cel", 5, 110, 48, "return temperature");
    private static readonly ComputationInput Flue = Within("flueTemperatureC", "Cel", 5, 600, 60, "flue temperature");
    private static readonly ComputationInput Load = Above("loadPercent", "%", 0, 120, 100, "load, of rated heat input; readings compare only at the same load");

    /// <summary>Heat to the water by combustion efficiency.</summary>
    public static readonly Computation HeatOutput = new()
    {
        Name = "heatOutput",
        What = "heat to the water, casing loss not taken off",
        Inputs = [Within("heatInputNetKw", "kW", 0, 100_000, 26, "net heat input"), Within("efficiencyNetPercent", "%", 0, 120, 98.1m, "combustion efficiency on net calorific value")],
        Unit = "kW",
        Template = "{heatInputNetKw} x {efficiencyNetPercent} / 100",
        Source = "definition",
        Exact = v => v.Exact("heatInputNetKw") * v.Exact("efficiencyNetPercent") / 100,
    };

    /// <summary>Heat of a water flow.</summary>
    public static readonly Computation WaterHeat = new()
    {
        Name = "waterHeat",
        What = "heat that a water flow carries",
        Inputs = [Within("kgPerSecond", "kg/s", 0, 1000, 0.35m, "water flow"), Flow, Return],
        Unit = "kW",
        Template = "{kgPerSecond} x cp x ({flowTemperatureC} - {returnTemperatureC})",
        Source = "heat capacity of water fitted to IAPWS-IF97",
        Demands = [("flowTemperatureC", "must be at least the return temperature", v => v.Exact("flowTemperatureC") >= v.Exact("returnTemperatureC"))],
        Real = v => WaterSide.HeatKw(v.Real("kgPerSecond"), v.Real("flowTemperatureC"), v.Real("returnTemperatureC")),
    };

    /// <summary>Water flow that carries a heat.</summary>
    public static readonly Computation WaterFlow = new()
    {
        Name = "waterFlow",
        What = "water flow that carries a heat, metered in the return",
        Inputs = [Within("heatKw", "kW", 0, 1000, 25, "heat"), Flow, Return],
        Unit = "L/min",
        Template = "60000 x {heatKw} / (cp x ({flowTemperatureC} - {returnTemperatureC})) / density",
        Source = "heat capacity of water fitted to IAPWS-IF97; density by Kell (1975)",
        // Closer together, the flow would be more than any domestic pump moves and the reading mostly its own error.
        Demands = [("flowTemperatureC", "must be at least 1 K above the return temperature", v => v.Exact("flowTemperatureC") >= v.Exact("returnTemperatureC") + 1)],
        Real = v => WaterSide.LitrePerMinute(
            WaterSide.FlowKgPerSecond(v.Real("heatKw"), v.Real("flowTemperatureC"), v.Real("returnTemperatureC")), v.Real("returnTemperatureC")),
    };

    /// <summary>Approach of the exchanger.</summary>
    public static readonly Computation Approach = new()
    {
        Name = "exchangerApproach",
        What = "flue temperature above return temperature at a known load; a rise over the years shows fouling",
        Inputs = [Flue, Return, Load],
        Unit = "K",
        Template = "{flueTemperatureC} - {returnTemperatureC} at {loadPercent} % load",
        Source = "definition",
        Exact = v => ExchangerReading.From(v.Exact("flueTemperatureC"), v.Exact("returnTemperatureC"), v.Exact("loadPercent"))!.ApproachK,
    };

    /// <summary>Transfer units of the exchanger.</summary>
    public static readonly Computation TransferUnits = new()
    {
        Name = "exchangerTransferUnits",
        What = "number of transfer units of the exchanger, water side taken as constant; below the dew point it only ranks readings",
        Inputs = [Within("burntGasC", "Cel", 600, 2200, 1600, "temperature of the burnt gas, assumed the same on every visit") with { Default = 1600m }, Flue, Return, Load],
        Unit = "1",
        Template = "ln(({burntGasC} - {returnTemperatureC}) / ({flueTemperatureC} - {returnTemperatureC})) at {loadPercent} % load",
        Source = "effectiveness-NTU method, capacity ratio 0; the burnt-gas temperature is an assumption",
        Demands =
        [
            ("flueTemperatureC", "must be at least 0.1 K above the return temperature", v => v.Exact("flueTemperatureC") >= v.Exact("returnTemperatureC") + 0.1m),
            ("flueTemperatureC", "must be at least 1 K below the temperature of the burnt gas", v => v.Exact("flueTemperatureC") + 1 <= v.Exact("burntGasC")),
        ],
        Real = v => HeatExchange.TransferUnits(v.Real("burntGasC"), v.Real("flueTemperatureC"), v.Real("returnTemperatureC")),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } = [HeatOutput, WaterHeat, WaterFlow, Approach, TransferUnits];
}
