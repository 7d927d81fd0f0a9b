namespace Calculations;

/// <summary>Flue loss by the short formulas of the trade, in double. Dry flue gas only: none of them knows condensation.</summary>
public static class FlueLoss
{
    /// <summary>
    /// Siegert loss from O2, per cent of net heat input: (tF - tA)(A2 / (xO2 - O2) + B). Constants from memory: natural gas A2 0.66, B 0.009;
    /// propane and butane 0.63, 0.008. Against an exact balance: natural gas within 0.2 points to 250 C, propane up to 0.7 low; against the
    /// natural-gas table of US DOE Steam Tip Sheet 4 within 0.7 points to 242 C.
    /// </summary>
    /// <param name="flueC">Flue temperature, degree Celsius, from the air's to 400.</param>
    /// <param name="airC">Air temperature, degree Celsius, -20 to 50.</param>
    /// <param name="o2Percent">O2 in dry flue gas, volume per cent, 0 to 18.</param>
    /// <param name="gas">The fuel.</param>
    /// <param name="o2InAirPercent">Oxygen in air, volume per cent; the constants belong to 21, <see cref="OxygenInAir.SiegertPercent"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SiegertFromO2Percent(double flueC, double airC, double o2Percent, GasFamily gas, double o2InAirPercent)
    {
        var (_, a2, b) = Siegert(gas);
        return Excess(flueC, airC) * (a2 / (Guard.Within(o2InAirPercent, 20, 22) - Guard.Within(o2Percent, 0, 18)) + b);
    }

    /// <summary>
    /// Siegert loss from CO2, per cent of net heat input: (tF - tA)(A1 / CO2 + B). Constants from memory: natural gas A1 0.37, B 0.009;
    /// propane and butane 0.42, 0.008. Errors as for <see cref="SiegertFromO2Percent"/>.
    /// </summary>
    /// <param name="flueC">Flue temperature, degree Celsius, from the air's to 400.</param>
    /// <param name="airC">Air temperature, degree Celsius, -20 to 50.</param>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, 1.5 to 15.</param>
    /// <param name="gas">The fuel.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SiegertFromCo2Percent(double flueC, double airC, double co2Percent, GasFamily gas)
    {
        var (a1, _, b) = Siegert(gas);
        return Excess(flueC, airC) * (a1 / CheckCo2(co2Percent) + b);
    }

    /// <summary>
    /// Gross efficiency, per cent, by the form of BS 845-1 (from secondary sources): 100 - dry - wet, with
    /// dry = K1 (tF - tA) / CO2, K1 = 255 C / Q and wet = 9 H (2488 + 2.1 tF - 4.2 tA) / Q; C and H mass per cent of the fuel, Q kJ/kg.
    /// Reads up to 0.5 points below an exact balance.
    /// </summary>
    /// <param name="fuel">Composition of the fuel, which must hold carbon or hydrogen.</param>
    /// <param name="flueC">Flue temperature, degree Celsius, from the air's to 400.</param>
    /// <param name="airC">Air temperature, degree Celsius, -20 to 50.</param>
    /// <param name="co2Percent">CO2 in dry flue gas, volume per cent, 1.5 to 15.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Bs845GrossPercent(FuelGas fuel, double flueC, double airC, double co2Percent)
    {
        var excess = Excess(flueC, airC);
        var (carbon, hydrogen, gross, _) = ByMass(fuel);
        var wet = 9 * hydrogen * (2488 + 2.1 * flueC - 4.2 * airC) / gross;
        return 100 - 255 * carbon / gross * excess / CheckCo2(co2Percent) - wet;
    }

    /// <summary>BS 845-1 constant K1 of the dry loss on gross and on net calorific value: 255 C / Q. See <see cref="Bs845GrossPercent"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fuel does not burn.</exception>
    public static (double Gross, double Net) Bs845K1(FuelGas fuel)
    {
        var (carbon, _, gross, net) = ByMass(fuel);
        return (255 * carbon / gross, 255 * carbon / net);
    }

    /// <summary>
    /// Heat lost as carbon monoxide, per cent of net heat input: CO 1e-6 x dry flue gas x 282.98 kJ/mol / H_net; heats of combustion by
    /// ISO 6976:2016, 25 degree Celsius. The dry flue gas is that of complete combustion,
    /// at 1000 ppm 0.05 % too little.
    /// </summary>
    /// <param name="fuel">Composition of the fuel, which must burn.</param>
    /// <param name="dryFlueGas">Dry flue gas, mol per mol fuel, 0 to 1000; see <see cref="Stoichiometry.Burn"/>.</param>
    /// <param name="coPpm">CO in dry flue gas, ppm, 0 to 100 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double CarbonMonoxidePercentNet(FuelGas fuel, double dryFlueGas, double coPpm)
    {
        var coKjPerMol = Iso6976.Edition2016.GrossKjPerMol(GasComponent.CarbonMonoxide, ReferenceTemperature.Celsius25);
        return Guard.Within(coPpm, 0, 100_000) * 1e-4 * Guard.Within(dryFlueGas, 0, 1000) * coKjPerMol / CalorificValue.OfFuel(fuel).NetKjPerMol;
    }

    private static (double A1, double A2, double B) Siegert(GasFamily gas) => gas switch
    {
        GasFamily.NaturalGas => (0.37, 0.66, 0.009),
        GasFamily.Propane or GasFamily.Butane => (0.42, 0.63, 0.008),
        _ => throw new ArgumentOutOfRangeException(nameof(gas), gas, "Not a gas family."),
    };

    private static double Excess(double flueC, double airC) =>
        Guard.Within(flueC, Guard.Within(airC, -20, 50), 400) - airC;

    private static double CheckCo2(double co2Percent) => Guard.Within(co2Percent, 1.5, 15);

    private static (double CarbonPercent, double HydrogenPercent, double GrossKjPerKg, double NetKjPerKg) ByMass(FuelGas fuel)
    {
        const double CarbonKgPerKmol = 12.0107, HydrogenKgPerKmol = 1.00794;
        var heat = CalorificValue.OfFuel(fuel);
        return (
            100 * CarbonKgPerKmol * fuel.Mean(component => component.Atoms().Carbon) / heat.KgPerKmol,
            100 * HydrogenKgPerKmol * fuel.Mean(component => component.Atoms().Hydrogen) / heat.KgPerKmol,
            1000 * heat.GrossMjPerKg,
            1000 * heat.NetMjPerKg);
    }
}
