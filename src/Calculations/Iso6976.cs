using System.Collections.Frozen;

namespace Calculations;

/// <summary>The temperatures that ISO 6976 tabulates, for combustion and for gas volume.</summary>
public enum ReferenceTemperature
{
    /// <summary>0 degree Celsius.</summary>
    Celsius0,

    /// <summary>15 degree Celsius.</summary>
    Celsius15,

    /// <summary>60 degree Fahrenheit, taken as 15.55 degree Celsius.</summary>
    Fahrenheit60,

    /// <summary>20 degree Celsius.</summary>
    Celsius20,

    /// <summary>25 degree Celsius; for combustion only.</summary>
    Celsius25,
}

/// <summary>
/// The constants of one edition of ISO 6976. An edition refuses a temperature or a component for which it holds no figure here.
/// </summary>
public sealed partial class Iso6976
{
    private readonly FrozenDictionary<GasComponent, Row> rows;

    private Iso6976(double gasConstant, double airKgPerKmol, double[] airCompression, Dictionary<GasComponent, Row> rows) =>
        (GasConstantJPerMolK, AirKgPerKmol, AirCompression, this.rows) =
        (gasConstant, airKgPerKmol, airCompression, rows.ToFrozenDictionary());

    /// <summary>Molar gas constant of the edition, J/(mol K).</summary>
    public double GasConstantJPerMolK { get; }

    /// <summary>Molar mass of dry air, kg/kmol.</summary>
    public double AirKgPerKmol { get; }

    private double[] AirCompression { get; }

    /// <summary>Compression factor of dry air at 101.325 kPa, dimensionless.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No figure at this temperature.</exception>
    public double AirZ(ReferenceTemperature volume) => At(AirCompression, volume);

    /// <summary>Molar mass, kg/kmol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No figure for this component.</exception>
    public double KgPerKmol(GasComponent component) => RowOf(component).KgPerKmol;

    /// <summary>Summation factor s for the compression factor, dimensionless.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No figure for this component or temperature.</exception>
    public double SummationFactor(GasComponent component, ReferenceTemperature volume) => At(RowOf(component).Summation, volume);

    /// <summary>Ideal gross calorific value, kJ/mol. For water vapour it is the heat of condensation.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No figure for this component or temperature.</exception>
    public double GrossKjPerMol(GasComponent component, ReferenceTemperature combustion) => At(RowOf(component).Gross, combustion);

    /// <summary>Heat of condensation of water, kJ/mol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No figure at this temperature.</exception>
    public double LatentKjPerMol(ReferenceTemperature combustion) => GrossKjPerMol(GasComponent.Water, combustion);

    /// <summary>A reference temperature in degree Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a reference temperature.</exception>
    public static double Celsius(ReferenceTemperature temperature) => temperature switch
    {
        ReferenceTemperature.Celsius0 => 0,
        ReferenceTemperature.Celsius15 => 15,
        ReferenceTemperature.Fahrenheit60 => 15.55,
        ReferenceTemperature.Celsius20 => 20,
        ReferenceTemperature.Celsius25 => 25,
        _ => throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "Not a reference temperature."),
    };

    private Row RowOf(GasComponent component) => rows.TryGetValue(component, out var row)
        ? row
        : throw new ArgumentOutOfRangeException(nameof(component), component, "This edition holds no figure for the component.");

    private static double At(double[] figures, ReferenceTemperature temperature) =>
        (int)temperature >= 0 && (int)temperature < figures.Length && !double.IsNaN(figures[(int)temperature])
            ? figures[(int)temperature]
            : throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "This edition holds no figure at the temperature.");

    private sealed record Row(double KgPerKmol, double[] Summation, double[] Gross);
}
