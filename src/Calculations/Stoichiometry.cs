namespace Calculations;

/// <summary>
/// Air demand and flue gas of a fuel, complete combustion, in double: the balance of the elements, as in any textbook of thermodynamics
/// (Cengel and Boles, chapter 15; Moran and Shapiro, chapter 13). Amounts are mol per mol fuel, which is m3 per m3 for ideal gases
/// (propane and butane depart from that by 2 to 3 %).
/// </summary>
public static class Stoichiometry
{
    /// <summary>
    /// Oxygen demand, mol per mol fuel: carbon + hydrogen/4 - oxygen/2, summed over the atoms of each component. Negative for a gas that
    /// brings more oxygen than it needs.
    /// </summary>
    /// <param name="fuel">Composition of the fuel.</param>
    public static double OxygenDemand(FuelGas fuel) => fuel.OxygenDemand;

    /// <summary>Theoretical air, mol per mol fuel: oxygen demand / oxygen in air (moist where the air is moist).</summary>
    /// <param name="fuel">Composition of the fuel.</param>
    /// <param name="air">Composition of the air.</param>
    public static double TheoreticalAir(FuelGas fuel, CombustionAir air) => OxygenDemand(fuel) / air.Oxygen;

    /// <summary>
    /// The flue gas at an excess-air ratio: CO2 = carbon, H2O = hydrogen/2, N2 = nitrogen/2, each with what the air brings along;
    /// O2 = (ratio - 1) x oxygen demand. Nothing is left unburnt and nothing dissociates.
    /// </summary>
    /// <param name="fuel">Composition of the fuel.</param>
    /// <param name="air">Composition of the air.</param>
    /// <param name="excessAirRatio">Air supplied / theoretical air (lambda), 1 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its range.</exception>
    public static FlueProducts Burn(FuelGas fuel, CombustionAir air, double excessAirRatio)
    {
        Guard.Within(excessAirRatio, 1, 1000);
        var airSupplied = excessAirRatio * TheoreticalAir(fuel, air);
        return new FlueProducts
        {
            Air = airSupplied,
            CarbonDioxide = fuel.Carbon + airSupplied * air.CarbonDioxide,
            Water = fuel.HydrogenPairs + airSupplied * air.Water,
            Nitrogen = fuel.NitrogenPairs + airSupplied * air.Nitrogen,
            Oxygen = (excessAirRatio - 1) * OxygenDemand(fuel),
        };
    }

    /// <summary>CO2 of dry flue gas without excess air, volume per cent: 100 CO2 / dry at ratio 1.</summary>
    /// <param name="fuel">Composition of the fuel.</param>
    /// <param name="air">Composition of the air.</param>
    public static double Co2MaxPercent(FuelGas fuel, CombustionAir air) => Burn(fuel, air, 1).Co2DryPercent;

    /// <summary>
    /// Excess-air ratio from O2 in dry flue gas, exact: 1 + f dry / (air (xO2 - f (1 - xH2O))), f the O2 fraction, dry and air those of
    /// theoretical combustion. xO2/(xO2 - f) is only an approximation.
    /// </summary>
    /// <param name="fuel">Composition of the fuel.</param>
    /// <param name="air">Composition of the air.</param>
    /// <param name="o2Percent">O2 in dry flue gas, volume per cent, 0 to below that of the dry air.</param>
    /// <exception cref="ArgumentOutOfRangeException">The O2 is outside its range.</exception>
    public static double ExcessAirRatioFromO2(FuelGas fuel, CombustionAir air, double o2Percent)
    {
        Guard.Below(o2Percent, 0, 100 * air.Oxygen / air.Dry);
        var o2 = o2Percent / 100;
        var exact = Burn(fuel, air, 1);
        return 1 + o2 * exact.Dry / (exact.Air * (air.Oxygen - o2 * air.Dry));
    }

    /// <summary>Excess-air ratio from CO2 in dry flue gas, exact: 1 + (CO2 - f dry) / (air (f (1 - xH2O) - xCO2)).</summary>
    /// <param name="fuel">Composition of the fuel.</param>
    /// <param name="air">Composition of the air.</param>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, above that of the dry air to the fuel's maximum.</param>
    /// <exception cref="ArgumentOutOfRangeException">The CO2 is outside its range.</exception>
    public static double ExcessAirRatioFromCo2(FuelGas fuel, CombustionAir air, double co2Percent)
    {
        var exact = Burn(fuel, air, 1);
        Guard.Above(co2Percent, 100 * air.CarbonDioxide / air.Dry, exact.Co2DryPercent);
        var co2 = co2Percent / 100;
        return 1 + (exact.CarbonDioxide - co2 * exact.Dry) / (exact.Air * (co2 * air.Dry - air.CarbonDioxide));
    }
}

/// <summary>Air as it reaches the burner, mole fractions. The rest is nitrogen.</summary>
public sealed record CombustionAir
{
    private CombustionAir(double oxygen, double carbonDioxide, double water) => (Oxygen, CarbonDioxide, Water) = (oxygen, carbonDioxide, water);

    /// <summary>Oxygen, mole fraction of the moist air.</summary>
    public double Oxygen { get; }

    /// <summary>Carbon dioxide, mole fraction of the moist air.</summary>
    public double CarbonDioxide { get; }

    /// <summary>Water vapour, mole fraction of the moist air.</summary>
    public double Water { get; }

    /// <summary>Nitrogen with argon, mole fraction of the moist air.</summary>
    public double Nitrogen => Dry - Oxygen - CarbonDioxide;

    /// <summary>All but the water.</summary>
    public double Dry => 1 - Water;

    /// <summary>Air of a given oxygen content in its dry part.</summary>
    /// <param name="o2InAirPercent">Oxygen in dry air, volume per cent, 20 to 22; see <see cref="OxygenInAir"/>.</param>
    /// <param name="waterPercent">Water vapour in the moist air, volume per cent, 0 to 10.</param>
    /// <param name="co2InAirPercent">Carbon dioxide in dry air, volume per cent, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static CombustionAir Of(double o2InAirPercent, double waterPercent = 0, double co2InAirPercent = 0)
    {
        var dry = 1 - Guard.Within(waterPercent, 0, 10) / 100;
        return new(
            Guard.Within(o2InAirPercent, 20, 22) / 100 * dry,
            Guard.Within(co2InAirPercent, 0, 1) / 100 * dry,
            waterPercent / 100);
    }
}

/// <summary>Flue gas of complete combustion, mol per mol fuel.</summary>
public sealed record FlueProducts
{
    /// <summary>Air supplied.</summary>
    public required double Air { get; init; }

    /// <summary>CO2.</summary>
    public required double CarbonDioxide { get; init; }

    /// <summary>H2O.</summary>
    public required double Water { get; init; }

    /// <summary>N2 with argon.</summary>
    public required double Nitrogen { get; init; }

    /// <summary>O2.</summary>
    public required double Oxygen { get; init; }

    /// <summary>All but the water.</summary>
    public double Dry => CarbonDioxide + Nitrogen + Oxygen;

    /// <summary>All of it.</summary>
    public double Wet => Dry + Water;

    /// <summary>CO2 in dry flue gas, volume per cent.</summary>
    public double Co2DryPercent => 100 * CarbonDioxide / Dry;

    /// <summary>O2 in dry flue gas, volume per cent.</summary>
    public double O2DryPercent => 100 * Oxygen / Dry;

    /// <summary>Water vapour in wet flue gas, volume per cent.</summary>
    public double WaterPercent => 100 * Water / Wet;
}
