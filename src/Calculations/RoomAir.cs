namespace Calculations;

/// <summary>
/// Carbon monoxide in a room, in double, well mixed: C = C0 e^-nt + G/(nV)(1 - e^-nt), the solution of dC/dt = G/V - nC. For explanation
/// only: a real room is not well mixed, and no result of this may pass or fail a record.
/// </summary>
public static class RoomAir
{
    private const double PpmPerUnit = 1e6;

    /// <summary>Concentration after a time, ppm. Without air change it grows in proportion to time.</summary>
    /// <param name="roomM3">Room volume V, m3, above 0 to 100 000.</param>
    /// <param name="coM3PerHour">Carbon monoxide released G, m3/h, 0 to 100.</param>
    /// <param name="airChangesPerHour">Air change n, 1/h, 0 to 100.</param>
    /// <param name="hours">Time, h, 0 to 1000.</param>
    /// <param name="startPpm">Concentration at the start, ppm, 0 to 100 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double CoPpm(double roomM3, double coM3PerHour, double airChangesPerHour, double hours, double startPpm = 0)
    {
        var growthPpmPerHour = GrowthPpmPerHour(roomM3, coM3PerHour);
        var changes = Guard.Within(airChangesPerHour, 0, 100) * Guard.Within(hours, 0, 1000);
        var left = Math.Exp(-changes);
        // (1 - e^-nt)/n tends to t as n falls to 0.
        var gained = changes < 1e-9 ? hours : (1 - left) / airChangesPerHour;
        return Guard.Within(startPpm, 0, 100_000) * left + growthPpmPerHour * gained;
    }

    /// <summary>Concentration after a long time, ppm: G / (n V).</summary>
    /// <param name="roomM3">Room volume, m3, above 0 to 100 000.</param>
    /// <param name="coM3PerHour">Carbon monoxide released, m3/h, 0 to 100.</param>
    /// <param name="airChangesPerHour">Air change, 1/h, above 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SteadyCoPpm(double roomM3, double coM3PerHour, double airChangesPerHour) =>
        GrowthPpmPerHour(roomM3, coM3PerHour) / Guard.Above(airChangesPerHour, 0, 100);

    /// <summary>Hours until a concentration is reached from clean air: -ln(1 - C/C_steady) / n.</summary>
    /// <param name="roomM3">Room volume, m3, above 0 to 100 000.</param>
    /// <param name="coM3PerHour">Carbon monoxide released, m3/h, above 0 to 100.</param>
    /// <param name="airChangesPerHour">Air change, 1/h, above 0 to 100.</param>
    /// <param name="coPpm">Concentration, ppm, 0 to below the steady one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the room never reaches the concentration.</exception>
    public static double HoursToCoPpm(double roomM3, double coM3PerHour, double airChangesPerHour, double coPpm)
    {
        var steadyPpm = SteadyCoPpm(roomM3, Guard.Above(coM3PerHour, 0, 100), airChangesPerHour);
        return -Math.Log(1 - Guard.Below(coPpm, 0, steadyPpm) / steadyPpm) / airChangesPerHour;
    }

    /// <summary>Carbon monoxide, mg/m3, of a volume concentration: ppm M p / (R T).</summary>
    /// <param name="coPpm">Concentration, ppm, 0 to 1 000 000.</param>
    /// <param name="celsius">Air temperature, degree Celsius, -40 to 50.</param>
    /// <param name="pressurePa">Air pressure, Pa, 60 000 to 110 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double MgPerM3(double coPpm, double celsius, double pressurePa = Constants.StandardPressurePa) =>
        Guard.Within(coPpm, 0, PpmPerUnit) / PpmPerUnit * Constants.CarbonMonoxideGPerMol * 1000
        * Guard.Within(pressurePa, 60_000, 110_000)
        / (Constants.GasConstantJPerMolK * Constants.Kelvin(Guard.Within(celsius, -40, 50)));

    private static double GrowthPpmPerHour(double roomM3, double coM3PerHour) =>
        PpmPerUnit * Guard.Within(coM3PerHour, 0, 100) / Guard.Above(roomM3, 0, 100_000);
}
