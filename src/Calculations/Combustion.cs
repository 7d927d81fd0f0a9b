namespace Calculations;

/// <summary>Algebra of dry flue-gas readings, in decimal. Compare results unrounded; round for display only.</summary>
public static class Combustion
{
    private const decimal PpmPerPercent = 10_000m;

    /// <summary>
    /// Combustion ratio CO/CO2, dimensionless: r = CO_ppm / (CO2_% x 10 000). Dilution with air leaves it unchanged.
    /// </summary>
    /// <param name="coPpm">CO in dry flue gas, ppm by volume, 0 to 1 000 000.</param>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, above 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its range.</exception>
    public static decimal Ratio(decimal coPpm, decimal co2Percent) =>
        Guard.Within(coPpm, 0m, 1_000_000m) / (Guard.Above(co2Percent, 0m, 100m) * PpmPerPercent);

    /// <summary>
    /// CO2 that goes with an O2 reading, dry, volume per cent: CO2 = CO2max (xO2 - O2) / xO2. Exact for complete combustion.
    /// </summary>
    /// <param name="o2Percent">O2 in dry flue gas, volume per cent, 0 to <paramref name="o2InAirPercent"/>.</param>
    /// <param name="gas">The fuel, for its CO2max.</param>
    /// <param name="o2InAirPercent">Oxygen in air, volume per cent; see <see cref="OxygenInAir"/>. 20.95 is what CO2max rests on.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal Co2FromO2Percent(decimal o2Percent, GasFamily gas, decimal o2InAirPercent)
    {
        CheckAir(o2InAirPercent);
        return gas.Co2MaxPercent() * (o2InAirPercent - Guard.Within(o2Percent, 0m, o2InAirPercent)) / o2InAirPercent;
    }

    /// <summary>The inverse of <see cref="Co2FromO2Percent"/>: O2 = xO2 (1 - CO2 / CO2max).</summary>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, 0 to the fuel's CO2max.</param>
    /// <param name="gas">The fuel, for its CO2max.</param>
    /// <param name="o2InAirPercent">Oxygen in air, volume per cent.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal O2FromCo2Percent(decimal co2Percent, GasFamily gas, decimal o2InAirPercent)
    {
        CheckAir(o2InAirPercent);
        var co2MaxPercent = gas.Co2MaxPercent();
        return o2InAirPercent * (co2MaxPercent - Guard.Within(co2Percent, 0m, co2MaxPercent)) / co2MaxPercent;
    }

    internal static void CheckAir(decimal o2InAirPercent) => Guard.Within(o2InAirPercent, 20m, 22m);
}
