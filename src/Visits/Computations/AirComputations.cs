using Calculations;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>Ventilation, draught and room air.</summary>
public static class AirComputations
{
    /// <summary>Free area for open flues.</summary>
    public static readonly Computation OpenFlueVentArea = new()
    {
        Name = "openFlueVentArea",
        What = "free vent area that the open flues of a room need",
        Inputs =
        [
            Within("openFluedNetKw", "kW", 0, 70, 20, "net heat input of all open flues in the room"),
            Above("cm2PerKw", "cm2/kW", 0, 50, 5, "free area for each kW net"),
            Within("leakageKw", "kW", 0, 70, 7, "input that air leaking in feeds"),
            Within("sharePercent", "%", 100, 200, 100, "share of the plain area: more where the air comes through other rooms") with { Default = 100m },
        ],
        Unit = "cm2",
        Template = "{cm2PerKw} x ({openFluedNetKw} - {leakageKw}, at least 0) x {sharePercent} / 100",
        Source = "BS 5440-2",
        Exact = v => AirSupply.FreeAreaCm2(v.Exact("openFluedNetKw"), v.Exact("cm2PerKw"), v.Exact("leakageKw")) * v.Exact("sharePercent") / 100,
    };

    /// <summary>Flow through a vent.</summary>
    public static readonly Computation VentFlow = new()
    {
        Name = "ventFlow",
        What = "air flow through a sharp-edged vent",
        Inputs = [Within("freeAreaCm2", "cm2", 0, 10_000, 65, "free area"), Within("pressurePa", "Pa", 0, 100, 4, "pressure difference")],
        Unit = "m3/h",
        Template = "3600 x 0.61 x {freeAreaCm2} / 10000 x sqrt(2 x {pressurePa} / 1.2)",
        Source = "orifice equation, discharge coefficient 0.61, air 1.2 kg/m3",
        Real = v => AirSupply.FlowM3PerHour(v.Real("freeAreaCm2"), v.Real("pressurePa")),
    };

    /// <summary>Draught of a flue.</summary>
    public static readonly Computation FlueDraught = new()
    {
        Name = "flueDraught",
        What = "natural draught of a flue without friction, flue gas taken as air",
        Inputs =
        [
            Within("heightM", "m", 0, 200, 5, "height of the flue above the appliance"),
            Within("outsideC", "Cel", -40, 50, 10, "outside temperature"),
            Within("flueTemperatureC", "Cel", -40, 600, 80, "mean flue temperature"),
        ],
        Unit = "Pa",
        Template = "0.0342 x 101325 x {heightM} x (1 / ({outsideC} + 273.15) - 1 / ({flueTemperatureC} + 273.15))",
        Source = "hydrostatics and ideal gas law",
        Real = v => Draught.PressurePa(v.Real("heightM"), v.Real("outsideC"), v.Real("flueTemperatureC")),
    };

    /// <summary>Carbon monoxide in a room.</summary>
    public static readonly Computation RoomCo = new()
    {
        Name = "roomCo",
        What = "carbon monoxide in a well-mixed room after a time; explains, and judges nothing",
        Inputs =
        [
            Above("roomM3", "m3", 0, 100_000, 30, "room volume"),
            Within("coM3PerHour", "m3/h", 0, 100, 0.001m, "carbon monoxide released"),
            Within("airChangesPerHour", "/h", 0, 100, 0.5m, "air changes in an hour"),
            Within("hours", "h", 0, 1000, 1, "time"),
            Within("startPpm", "[ppm]", 0, 100_000, 0, "concentration at the start") with { Default = 0m },
        ],
        Unit = "[ppm]",
        Template = "{startPpm} e^(-nt) + 1000000 x {coM3PerHour} / (n x {roomM3}) x (1 - e^(-nt)), n = {airChangesPerHour}, t = {hours}",
        Source = "mass balance of a well-mixed room",
        // Beyond pure carbon monoxide the balance has no meaning.
        Demands = [("coM3PerHour", "fills the room", v => RoomCoPpm(v) <= 1e6)],
        Real = RoomCoPpm,
    };

    /// <summary>Carbon monoxide by mass.</summary>
    public static readonly Computation CoByMass = new()
    {
        Name = "coByMass",
        What = "carbon monoxide by mass of a volume concentration, at 101325 Pa",
        Inputs = [Within("coPpm", "[ppm]", 0, 1_000_000, 30, "CO"), Within("airTemperatureC", "Cel", -40, 50, 25, "air temperature") with { Default = 25m }],
        Unit = "mg/m3",
        Template = "{coPpm} x 0.0280101 x 101325 / (8.314462618 x ({airTemperatureC} + 273.15))",
        Source = "ideal gas law; molar mass of ISO 6976:2016",
        Real = v => RoomAir.MgPerM3(v.Real("coPpm"), v.Real("airTemperatureC")),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } = [OpenFlueVentArea, VentFlow, FlueDraught, RoomCo, CoByMass];

    private static double RoomCoPpm(InputValues v) =>
        RoomAir.CoPpm(v.Real("roomM3"), v.Real("coM3PerHour"), v.Real("airChangesPerHour"), v.Real("hours"), v.Real("startPpm"));
}
