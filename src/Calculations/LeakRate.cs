namespace Calculations;

/// <summary>
/// Leak rate from a pressure test, in double, by the ideal-gas law; the volume does not change. A change of pressure or of temperature
/// alone is within 0.3 % of real air near atmospheric pressure. A drift of 0.3 K looks like a drop of 1 mbar: let the temperature settle
/// before the test.
/// </summary>
public static class LeakRate
{
    /// <summary>Leak at constant temperature, litre/h of gas at atmospheric pressure: V dp / (p_atm t), the usual pressure-decay form.</summary>
    /// <param name="volumeM3">Installation volume, m3, above 0 to 100.</param>
    /// <param name="dropMbar">Pressure drop, mbar, -100 to 100; negative is a rise.</param>
    /// <param name="seconds">Test time, s, above 0 to 86 400.</param>
    /// <param name="atmosphereMbar">Atmospheric pressure, mbar, 800 to 1100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double LitrePerHour(double volumeM3, double dropMbar, double seconds, double atmosphereMbar = Constants.StandardPressureMbar) =>
        CheckVolume(volumeM3) * 1000 * Guard.Within(dropMbar, -100, 100) / (CheckAtmosphere(atmosphereMbar) * CheckSeconds(seconds) / 3600);

    /// <summary>
    /// Leak with temperature compensation, mol/s: (V / R)(p1/T1 - p2/T2) / t, absolute pressures and kelvin; the form of 40 CFR 1065.644.
    /// Negative where gas is gained.
    /// </summary>
    /// <param name="volumeM3">Volume, m3, above 0 to 100.</param>
    /// <param name="startPa">Absolute pressure at the start, Pa, above 0 to 1e6.</param>
    /// <param name="startC">Gas temperature at the start, degree Celsius, -40 to 100.</param>
    /// <param name="endPa">Absolute pressure at the end, Pa, above 0 to 1e6.</param>
    /// <param name="endC">Gas temperature at the end, degree Celsius, -40 to 100.</param>
    /// <param name="seconds">Test time, s, above 0 to 86 400.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double MolPerSecond(double volumeM3, double startPa, double startC, double endPa, double endC, double seconds) =>
        CheckVolume(volumeM3) / Constants.GasConstantJPerMolK
        * (Guard.Above(startPa, 0, 1e6) / CheckKelvin(startC) - Guard.Above(endPa, 0, 1e6) / CheckKelvin(endC)) / CheckSeconds(seconds);

    /// <summary>
    /// The part of a gauge drop that is leak, mbar, at the starting temperature and barometer: p1 - p2 T1/T2, absolute pressures and kelvin.
    /// An error of 0.1 K in the temperature change is one of 0.36 mbar in the result.
    /// </summary>
    /// <param name="startGaugeMbar">Gauge pressure at the start, mbar, 0 to 2000.</param>
    /// <param name="startC">Gas temperature at the start, degree Celsius, -40 to 100.</param>
    /// <param name="endGaugeMbar">Gauge pressure at the end, mbar, 0 to 2000.</param>
    /// <param name="endC">Gas temperature at the end, degree Celsius, -40 to 100.</param>
    /// <param name="atmosphereMbar">Atmospheric pressure during the test, mbar, 800 to 1100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double CompensatedDropMbar(
        double startGaugeMbar, double startC, double endGaugeMbar, double endC, double atmosphereMbar = Constants.StandardPressureMbar) =>
        CheckAtmosphere(atmosphereMbar) + CheckGauge(startGaugeMbar)
        - (atmosphereMbar + CheckGauge(endGaugeMbar)) * CheckKelvin(startC) / CheckKelvin(endC);

    /// <summary>
    /// Change of gauge pressure that a temperature change alone brings to a tight installation, mbar: p (T2/T1 - 1), p absolute, kelvin
    /// (Gay-Lussac's law).
    /// </summary>
    /// <param name="gaugeMbar">Gauge pressure at the start, mbar, 0 to 2000.</param>
    /// <param name="startC">Gas temperature at the start, degree Celsius, -40 to 100.</param>
    /// <param name="endC">Gas temperature at the end, degree Celsius, -40 to 100.</param>
    /// <param name="atmosphereMbar">Atmospheric pressure, mbar, 800 to 1100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double TemperatureDriftMbar(
        double gaugeMbar, double startC, double endC, double atmosphereMbar = Constants.StandardPressureMbar) =>
        (CheckAtmosphere(atmosphereMbar) + CheckGauge(gaugeMbar)) * (CheckKelvin(endC) / CheckKelvin(startC) - 1);

    private static double CheckVolume(double volumeM3) => Guard.Above(volumeM3, 0, 100);

    private static double CheckSeconds(double seconds) => Guard.Above(seconds, 0, 86_400);

    private static double CheckGauge(double gaugeMbar) => Guard.Within(gaugeMbar, 0, 2000);

    private static double CheckAtmosphere(double atmosphereMbar) => Guard.Within(atmosphereMbar, 800, 1100);

    private static double CheckKelvin(double celsius) => Constants.Kelvin(Guard.Within(celsius, -40, 100));
}
