namespace Calculations;

/// <summary>
/// Flue loss and efficiency from an energy balance over the flue gas, in double. Air and fuel enter at air temperature; the flue gas leaves
/// well mixed and, where cold enough, saturated; condensate leaves at flue temperature. No casing loss, no unburnt gas: an upper bound.
/// Calorific values at 25 degree Celsius by ISO 6976:2016, heat capacities by NASA TM-2002-211556, saturation by <see cref="DewPoint"/>.
/// Within 0.7 points of the gross efficiencies of US DOE Steam Tip Sheet 4.
/// </summary>
public static class FlueBalance
{
    // Liquid water: 4.18 kJ/(kg K); good to 0.3 % from 5 to 90 C (IAPWS-IF97).
    private const double LiquidKjPerMolK = 4.18 * Constants.WaterKgPerMol;

    /// <summary>The balance at one operating point.</summary>
    /// <param name="fuel">Composition of the fuel, which must burn.</param>
    /// <param name="air">Composition of the air.</param>
    /// <param name="excessAirRatio">Air supplied / theoretical air, 1 to 10.</param>
    /// <param name="flueC">Flue temperature, degree Celsius, 5 to 370.</param>
    /// <param name="airC">Temperature of the air at the appliance, degree Celsius, -20 to 50, at most the flue's.</param>
    /// <param name="pressurePa">Absolute pressure, Pa, 80 000 to 110 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FlueEfficiency Of(
        FuelGas fuel,
        CombustionAir air,
        double excessAirRatio,
        double flueC,
        double airC,
        double pressurePa = Constants.StandardPressurePa)
    {
        Guard.Within(excessAirRatio, 1, 10);
        Guard.Within(flueC, 5, 370);
        Guard.Within(airC, -20, Math.Min(50, flueC));
        Guard.Within(pressurePa, 80_000, 110_000);
        var heat = CalorificValue.OfFuel(fuel);
        var gas = Stoichiometry.Burn(fuel, air, excessAirRatio);
        var condensed = Condensed(gas, flueC, pressurePa);
        var sensible = GasHeat.DryKj(gas, flueC, airC)
            + (gas.Water - condensed) * GasHeat.VapourKjPerMol(flueC, airC)
            + condensed * LiquidKjPerMolK * (flueC - airC);
        return new FlueEfficiency
        {
            SensibleLossPercentNet = 100 * sensible / heat.NetKjPerMol,
            LatentGainPercentNet = 100 * condensed * LatentKjPerMol(airC) / heat.NetKjPerMol,
            LatentPercentNet = 100 * (heat.GrossKjPerMol / heat.NetKjPerMol - 1),
            CondensedPercent = gas.Water > 0 ? 100 * condensed / gas.Water : 0,
            CondensateKgPerKwhGross = condensed * Constants.WaterKgPerMol / (heat.GrossKjPerMol / 1000 / Constants.MjPerKwh),
            GrossPerNet = heat.GrossKjPerMol / heat.NetKjPerMol,
        };
    }

    // Vapour that saturated flue gas still carries: dry y/(1-y), y = psat/p; what is formed beyond that condenses.
    private static double Condensed(FlueProducts gas, double flueC, double pressurePa)
    {
        var saturated = DewPoint.SaturationPressurePa(flueC) / pressurePa;
        return saturated >= 1 ? 0 : Math.Max(0, gas.Water - gas.Dry * saturated / (1 - saturated));
    }

    // ISO 6976:2016: 45.064 at 0 C, 44.013 at 25 C; straight between and beyond.
    private static double LatentKjPerMol(double celsius) => 45.064 - (45.064 - 44.013) / 25 * celsius;
}

/// <summary>What <see cref="FlueBalance"/> finds.</summary>
public sealed record FlueEfficiency
{
    /// <summary>Sensible heat in flue gas and condensate, per cent of net heat input.</summary>
    public required double SensibleLossPercentNet { get; init; }

    /// <summary>Heat regained by condensing, per cent of net heat input.</summary>
    public required double LatentGainPercentNet { get; init; }

    /// <summary>Latent heat of all the water the fuel forms, per cent of net heat input.</summary>
    public required double LatentPercentNet { get; init; }

    /// <summary>Share of the water vapour that condenses, per cent.</summary>
    public required double CondensedPercent { get; init; }

    /// <summary>Condensate, kg per kWh of gross heat input.</summary>
    public required double CondensateKgPerKwhGross { get; init; }

    /// <summary>Gross / net calorific value, dimensionless.</summary>
    public required double GrossPerNet { get; init; }

    /// <summary>Efficiency on net calorific value, per cent; above 100 where enough water condenses.</summary>
    public double NetPercent => 100 - SensibleLossPercentNet + LatentGainPercentNet;

    /// <summary>Efficiency on gross calorific value, per cent.</summary>
    public double GrossPercent => NetPercent / GrossPerNet;

    /// <summary>Condensate at a heat input, kg/h.</summary>
    /// <param name="grossKw">Gross heat input, kW, 0 to 100 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The heat input is outside its range.</exception>
    public double CondensateKgPerHour(double grossKw) => CondensateKgPerKwhGross * Guard.Within(grossKw, 0, 100_000);
}
