namespace Calculations;

/// <summary>Algebra of dry flue-gas readings, in decimal. Compare results unrounded; round for display only.</summary>
public static class FlueGas
{
    private const int PpmPerPercent = 10_000;

    /// <summary>
    /// Combustion ratio CO/CO2, dimensionless: r = CO_ppm / (CO2_% x 10 000), by definition. Dilution with air leaves it unchanged, so it
    /// needs neither the fuel nor the oxygen of the air.
    /// </summary>
    /// <param name="coPpm">CO in dry flue gas, ppm by volume, 0 to 1 000 000.</param>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, above 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its range.</exception>
    public static decimal Ratio(decimal coPpm, decimal co2Percent) =>
        CheckCo(coPpm) / (Guard.Above(co2Percent, 0m, 100m) * PpmPerPercent);

    /// <summary>
    /// CO2 that goes with an O2 reading, dry, volume per cent: CO2 = CO2max (xO2 - O2) / xO2; the form of 40 CFR part 75 appendix F, where
    /// CO2max is 100 Fc/Fd. Exact for complete combustion of the pure gas; a natural gas with heavier components holds about 2 % more.
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

    /// <summary>The inverse of <see cref="Co2FromO2Percent"/>, with the same source and errors: O2 = xO2 (1 - CO2 / CO2max).</summary>
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

    /// <summary>
    /// CO referred to flue gas without excess air ("air-free", not a moisture correction), ppm: CO xO2 / (xO2 - O2); the form of ANSI Z21 as
    /// US pages print it. Takes all O2 for excess air; the error of the result grows without bound as O2 nears that of the air.
    /// </summary>
    /// <param name="coPpm">CO in dry flue gas, ppm, 0 to 1 000 000.</param>
    /// <param name="o2Percent">O2 in dry flue gas, volume per cent, 0 to below <paramref name="o2InAirPercent"/>.</param>
    /// <param name="o2InAirPercent">Oxygen in air, volume per cent; 20.9 by custom, <see cref="OxygenInAir.FieldPercent"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal CoAirFreePpm(decimal coPpm, decimal o2Percent, decimal o2InAirPercent)
    {
        CheckAir(o2InAirPercent);
        return CheckCo(coPpm) * o2InAirPercent / (o2InAirPercent - Guard.Below(o2Percent, 0m, o2InAirPercent));
    }

    /// <summary>
    /// The same from CO2, ppm: CO CO2max / CO2; the form of the European boiler standards, from memory. Off by as much as the fuel's CO2max.
    /// </summary>
    /// <param name="coPpm">CO in dry flue gas, ppm, 0 to 1 000 000.</param>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, above 0 to the fuel's CO2max.</param>
    /// <param name="gas">The fuel, for its CO2max.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal CoAirFreeFromCo2Ppm(decimal coPpm, decimal co2Percent, GasFamily gas) =>
        CheckCo(coPpm) * gas.Co2MaxPercent() / Guard.Above(co2Percent, 0m, gas.Co2MaxPercent());

    /// <summary>
    /// Fuel factor Fo, dimensionless, from a pair of readings: (xO2 - (O2 - CO/2)) / (CO2 + CO); 40 CFR part 60 appendix A, method 3B.
    /// Far from <see cref="ExpectedFuelFactor"/> the readings do not belong to the fuel, or air leaked in between. Most analysers compute
    /// CO2 from O2: then it only tests the fuel they were set to.
    /// </summary>
    /// <param name="o2Percent">O2 in dry flue gas, volume per cent, 0 to <paramref name="o2InAirPercent"/>.</param>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, above 0 to 25.</param>
    /// <param name="coPpm">CO in dry flue gas, ppm, 0 to 100 000.</param>
    /// <param name="o2InAirPercent">Oxygen in air, volume per cent; the method uses 20.9.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal FuelFactor(decimal o2Percent, decimal co2Percent, decimal coPpm, decimal o2InAirPercent)
    {
        CheckAir(o2InAirPercent);
        var coPercent = Guard.Within(coPpm, 0m, 100_000m) / PpmPerPercent;
        return (o2InAirPercent - (Guard.Within(o2Percent, 0m, o2InAirPercent) - coPercent / 2))
            / (Guard.Above(co2Percent, 0m, 25m) + coPercent);
    }

    /// <summary>The fuel factor that follows from the fuel's CO2max: xO2 / CO2max.</summary>
    /// <param name="gas">The fuel.</param>
    /// <param name="o2InAirPercent">Oxygen in air, volume per cent; the same as for <see cref="FuelFactor"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal ExpectedFuelFactor(GasFamily gas, decimal o2InAirPercent)
    {
        CheckAir(o2InAirPercent);
        return o2InAirPercent / gas.Co2MaxPercent();
    }

    /// <summary>Range of fuel factors of a fuel in 40 CFR part 60 appendix A, method 3B (figures from memory).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a gas family.</exception>
    public static (decimal Low, decimal High) FuelFactorBand(GasFamily gas) => gas switch
    {
        GasFamily.NaturalGas => (1.600m, 1.836m),
        GasFamily.Propane => (1.434m, 1.586m),
        GasFamily.Butane => (1.405m, 1.553m),
        _ => throw new ArgumentOutOfRangeException(nameof(gas), gas, "Not a gas family."),
    };

    private static decimal CheckCo(decimal coPpm) => Guard.Within(coPpm, 0m, 1_000_000m);

    private static void CheckAir(decimal o2InAirPercent) => Guard.Within(o2InAirPercent, 20m, 22m);
}
