using Calculations;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>What a pressure drop means, and what imitates one.</summary>
public static class TightnessComputations
{
    private static readonly ComputationInput Atmosphere =
        Within("atmosphereMbar", "mbar", 800, 1100, 1013.25m, "atmospheric pressure") with { Default = 1013.25m };

    /// <summary>Leak rate of a drop.</summary>
    public static readonly Computation LeakRateOfDrop = new()
    {
        Name = "leakRate",
        What = "leak that a pressure drop means, as gas at atmospheric pressure, temperature unchanged",
        Inputs =
        [
            Above("installationVolumeM3", "m3", 0, 100, 0.012m, "installation volume"),
            Within("dropMbar", "mbar", 0, 100, 1, "pressure drop"),
            Within("durationMinutes", "min", 0.01m, 1440, 2, "length of the test"),
            Atmosphere,
        ],
        Unit = "L/h",
        Template = "1000 x {installationVolumeM3} x {dropMbar} / {atmosphereMbar} x 60 / {durationMinutes}",
        Source = "ideal gas law",
        Real = v => LeakRate.LitrePerHour(v.Real("installationVolumeM3"), v.Real("dropMbar"), v.Real("durationMinutes") * 60, v.Real("atmosphereMbar")),
    };

    /// <summary>What cooling by one kelvin does.</summary>
    public static readonly Computation DropOfOneKelvin = new()
    {
        Name = "dropOfOneKelvin",
        What = "drop that gas cooling by 1 K imitates on a tight installation",
        Inputs =
        [
            Within("testPressureMbar", "mbar", 0, 2000, 20.4m, "gauge pressure at the start"),
            Within("gasTemperatureC", "Cel", -39, 100, 15, "gas temperature at the start") with { Default = 15m },
            Atmosphere,
        ],
        Unit = "mbar",
        Template = "({atmosphereMbar} + {testPressureMbar}) x 1 K / ({gasTemperatureC} + 273.15)",
        Source = "ideal gas law",
        Real = v => -LeakRate.TemperatureDriftMbar(v.Real("testPressureMbar"), v.Real("gasTemperatureC"), v.Real("gasTemperatureC") - 1, v.Real("atmosphereMbar")),
    };

    /// <summary>The leak in a drop, temperature allowed for.</summary>
    public static readonly Computation CompensatedDrop = new()
    {
        Name = "compensatedDrop",
        What = "part of a pressure drop that is leak, once the change of temperature is allowed for",
        Inputs =
        [
            Within("startMbar", "mbar", 0, 2000, 20, "gauge pressure at the start"), Within("startC", "Cel", -40, 100, 15, "gas temperature at the start"),
            Within("endMbar", "mbar", 0, 2000, 19, "gauge pressure at the end"), Within("endC", "Cel", -40, 100, 14.8m, "gas temperature at the end"),
            Atmosphere,
        ],
        Unit = "mbar",
        Template = "({atmosphereMbar} + {startMbar}) - ({atmosphereMbar} + {endMbar}) x ({startC} + 273.15) / ({endC} + 273.15)",
        Source = "ideal gas law",
        Real = v => LeakRate.CompensatedDropMbar(v.Real("startMbar"), v.Real("startC"), v.Real("endMbar"), v.Real("endC"), v.Real("atmosphereMbar")),
    };

    /// <summary>Volume of a pipe.</summary>
    public static readonly Computation PipeVolume = new()
    {
        Name = "pipeVolume",
        What = "volume of a metre of pipe",
        Inputs = [Within("boreMm", "mm", 4, 200, 20.2m, "inside diameter")],
        Unit = "m3/m",
        Template = "pi / 4 x {boreMm}^2 / 1000000",
        Source = "geometry",
        Exact = v => InstallationVolume.PipeM3PerM(v.Exact("boreMm")),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } = [LeakRateOfDrop, DropOfOneKelvin, CompensatedDrop, PipeVolume];
}
