namespace Calculations;

/// <summary>Meters whose internal volume is known.</summary>
public enum GasMeter
{
    /// <summary>No meter in the tested section.</summary>
    None,

    /// <summary>Diaphragm meter U6 or G4.</summary>
    DiaphragmU6,

    /// <summary>Ultrasonic meter E6.</summary>
    UltrasonicE6,

    /// <summary>Diaphragm meter U16 or G10.</summary>
    DiaphragmU16,
}

/// <summary>
/// Volume of a gas installation for a tightness test, in decimal: meter + 1.1 x pipes (a tenth for fittings; IGEM/UP/1B as taught, from
/// memory).
/// </summary>
public static class InstallationVolume
{
    private const decimal FittingsAllowance = 1.1m;

    /// <summary>Volume of a metre of pipe, m3/m, by geometry: pi/4 bore^2.</summary>
    /// <param name="boreMm">Inside diameter, mm, 4 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bore is outside its range.</exception>
    public static decimal PipeM3PerM(decimal boreMm) =>
        0.785398163397448m * Guard.Within(boreMm, 4m, 200m) * boreMm / 1_000_000m;

    /// <summary>
    /// Volume of a metre of copper pipe, m3/m, the trade's rounded figures: 0.00014, 0.00032, 0.00054, 0.00084 (common practice, no source).
    /// Within 4 % of the EN 1057 tubes 15 x 0.7, 22 x 0.9, 28 x 0.9 and 35 x 1.2 mm.
    /// </summary>
    /// <param name="outsideMm">Outside diameter, mm: 15, 22, 28 or 35.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not one of these sizes.</exception>
    public static decimal CopperM3PerM(int outsideMm) => outsideMm switch
    {
        15 => 0.00014m,
        22 => 0.00032m,
        28 => 0.00054m,
        35 => 0.00084m,
        _ => throw new ArgumentOutOfRangeException(nameof(outsideMm), outsideMm, "Known sizes are 15, 22, 28 and 35 mm."),
    };

    /// <summary>Volume of a meter, m3 (IGEM/UP/1B as taught, from memory): 0, 0.008, 0.0024, 0.025.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a known meter.</exception>
    public static decimal MeterM3(GasMeter meter) => meter switch
    {
        GasMeter.None => 0m,
        GasMeter.DiaphragmU6 => 0.008m,
        GasMeter.UltrasonicE6 => 0.0024m,
        GasMeter.DiaphragmU16 => 0.025m,
        _ => throw new ArgumentOutOfRangeException(nameof(meter), meter, "Not a known meter."),
    };

    /// <summary>Installation volume, m3: meter + 1.1 x sum of length x volume a metre.</summary>
    /// <param name="meter">The meter in the tested section.</param>
    /// <param name="pipes">Length of each run, m, 0 to 1000, and its volume a metre, m3/m, 0 to 0.04.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal TotalM3(GasMeter meter, IEnumerable<(decimal LengthM, decimal M3PerM)> pipes) =>
        MeterM3(meter) + FittingsAllowance
        * pipes.Sum(pipe => Guard.Within(pipe.LengthM, 0m, 1000m, nameof(pipes)) * Guard.Within(pipe.M3PerM, 0m, 0.04m, nameof(pipes)));
}
