namespace Calculations;

/// <summary>Ventilation openings and combustion air.</summary>
public static class AirSupply
{
    /// <summary>
    /// Free area an open-flued appliance needs in its room, cm2, in decimal: rate x (input - deduction), never below 0. 5 cm2 per kW net above
    /// 7 kW: NHBC Standards 6.8.9 table 3 for England and Wales; that the 7 kW are deducted once a room: BS 5440-2 as taught.
    /// </summary>
    /// <param name="netInputKw">Net heat input of all open-flued appliances in the room, kW, 0 to 70.</param>
    /// <param name="cm2PerKw">Free area a kW, cm2/kW, above 0 to 50.</param>
    /// <param name="deductedKw">Input that air leakage of the room supplies, kW, 0 to 70.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal FreeAreaCm2(decimal netInputKw, decimal cm2PerKw = 5m, decimal deductedKw = 7m) =>
        Guard.Above(cm2PerKw, 0m, 50m) * Math.Max(0m, Guard.Within(netInputKw, 0m, 70m) - Guard.Within(deductedKw, 0m, 70m));

    /// <summary>
    /// Flow through an opening, m3/h, in double: 3600 Cd A sqrt(2 dp / rho), the orifice equation of Bernoulli's law. Grilles and long
    /// sleeves pass less: the discharge coefficient decides.
    /// </summary>
    /// <param name="freeAreaCm2">Free area, cm2, 0 to 10 000.</param>
    /// <param name="pressurePa">Pressure difference, Pa, 0 to 100.</param>
    /// <param name="dischargeCoefficient">Cd, dimensionless, 0.1 to 1; about 0.61 for a sharp edge.</param>
    /// <param name="airKgPerM3">Density of the air, kg/m3, 0.9 to 1.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FlowM3PerHour(double freeAreaCm2, double pressurePa, double dischargeCoefficient = 0.61, double airKgPerM3 = 1.2) =>
        3600 * Guard.Within(dischargeCoefficient, 0.1, 1) * Guard.Within(freeAreaCm2, 0, 10_000) / 10_000
        * Math.Sqrt(2 * Guard.Within(pressurePa, 0, 100) / Guard.Within(airKgPerM3, 0.9, 1.5));

    /// <summary>Combustion air, m3/h at 15 degree Celsius and 1013.25 mbar, in double: gas rate x theoretical air x excess-air ratio.</summary>
    /// <param name="fuel">Composition of the fuel, which must burn.</param>
    /// <param name="air">Composition of the air.</param>
    /// <param name="netInputKw">Net heat input, kW, 0 to 100 000.</param>
    /// <param name="excessAirRatio">Air supplied / theoretical air, 1 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double CombustionAirM3PerHour(FuelGas fuel, CombustionAir air, double netInputKw, double excessAirRatio)
    {
        var netMjPerM3 = Guard.Above(CalorificValue.Of(fuel).NetMjPerM3, 0, double.MaxValue, nameof(fuel));
        return Guard.Within(netInputKw, 0, 100_000) * Constants.MjPerKwh / netMjPerM3
            * Stoichiometry.Burn(fuel, air, excessAirRatio).Air;
    }
}
