namespace Calculations;

/// <summary>
/// Calorific value, density and Wobbe index of a gas by ISO 6976, in double:
/// M = sum xM; Z = 1 - (p/p0)(sum xs)^2; H_net = H_gross - (H atoms / 2) L; H_vol = H p/(R T Z); d = (M/M_air)(Z_air/Z); W = H/sqrt(d).
/// </summary>
public static class CalorificValue
{
    /// <summary>Properties by the 2016 edition, combustion and volume at 15 degree Celsius, 101.325 kPa, dry: the base of EN 437.</summary>
    public static GasProperties Of(FuelGas gas) =>
        Of(gas, Iso6976.Edition2016, ReferenceTemperature.Celsius15, ReferenceTemperature.Celsius15, 101.325);

    /// <summary>
    /// Properties to which flue losses refer: the 2016 edition, combustion at 25 degree Celsius. A fuel that does not burn is refused.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The fuel does not burn.</exception>
    public static GasProperties OfFuel(FuelGas fuel) => fuel.PropertiesAsFuel ??= WorkOutAsFuel(fuel);

    private static GasProperties WorkOutAsFuel(FuelGas fuel)
    {
        var properties = Of(fuel, Iso6976.Edition2016, ReferenceTemperature.Celsius25, ReferenceTemperature.Celsius15, 101.325);
        Guard.Above(properties.NetKjPerMol, 0, double.MaxValue, nameof(fuel));
        return properties;
    }

    /// <summary>Properties at chosen reference conditions.</summary>
    /// <param name="gas">Composition; Z must come out above 0.9.</param>
    /// <param name="edition">Constants to use.</param>
    /// <param name="combustion">Reference temperature of combustion.</param>
    /// <param name="volume">Reference temperature of volume; never 25 degree Celsius.</param>
    /// <param name="pressureKPa">Reference pressure, kPa absolute, 90 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the edition holds no figure.</exception>
    public static GasProperties Of(
        FuelGas gas, Iso6976 edition, ReferenceTemperature combustion, ReferenceTemperature volume, double pressureKPa)
    {
        Guard.Within(pressureKPa, 90, 110);
        var kgPerKmol = gas.Mean(edition.KgPerKmol);
        var summation = gas.Mean(component => edition.SummationFactor(component, volume));
        var compressionFactor = 1 - pressureKPa / 101.325 * summation * summation;
        Guard.Above(compressionFactor, 0.9, 1.1);
        var gross = gas.Mean(component => edition.GrossKjPerMol(component, combustion));
        var net = gross - gas.Mean(component => component.Atoms().Hydrogen) / 2 * edition.LatentKjPerMol(combustion);
        return new GasProperties
        {
            KgPerKmol = kgPerKmol,
            CompressionFactor = compressionFactor,
            GrossKjPerMol = gross,
            NetKjPerMol = net,
            MolPerM3 = pressureKPa * 1000
                / (edition.GasConstantJPerMolK * Constants.Kelvin(Iso6976.Celsius(volume)) * compressionFactor),
            RelativeDensity = kgPerKmol / edition.AirKgPerKmol * edition.AirZ(volume) / compressionFactor,
        };
    }
}

/// <summary>What <see cref="CalorificValue"/> finds; the volume-based figures are at the chosen reference conditions.</summary>
public sealed record GasProperties
{
    /// <summary>Mean molar mass, kg/kmol.</summary>
    public required double KgPerKmol { get; init; }

    /// <summary>Compression factor Z, dimensionless.</summary>
    public required double CompressionFactor { get; init; }

    /// <summary>Gross calorific value, kJ/mol.</summary>
    public required double GrossKjPerMol { get; init; }

    /// <summary>Net calorific value, kJ/mol.</summary>
    public required double NetKjPerMol { get; init; }

    /// <summary>Amount of gas in a cubic metre, mol/m3.</summary>
    public required double MolPerM3 { get; init; }

    /// <summary>Density relative to dry air, dimensionless.</summary>
    public required double RelativeDensity { get; init; }

    /// <summary>Gross calorific value, MJ/m3.</summary>
    public double GrossMjPerM3 => GrossKjPerMol * MolPerM3 / 1000;

    /// <summary>Net calorific value, MJ/m3.</summary>
    public double NetMjPerM3 => NetKjPerMol * MolPerM3 / 1000;

    /// <summary>Gross calorific value, MJ/kg.</summary>
    public double GrossMjPerKg => GrossKjPerMol / KgPerKmol;

    /// <summary>Net calorific value, MJ/kg.</summary>
    public double NetMjPerKg => NetKjPerMol / KgPerKmol;

    /// <summary>Density, kg/m3.</summary>
    public double KgPerM3 => KgPerKmol * MolPerM3 / 1000;

    /// <summary>Gross Wobbe index, MJ/m3.</summary>
    public double GrossWobbeMjPerM3 => GrossMjPerM3 / Math.Sqrt(RelativeDensity);

    /// <summary>Net Wobbe index, MJ/m3.</summary>
    public double NetWobbeMjPerM3 => NetMjPerM3 / Math.Sqrt(RelativeDensity);
}
