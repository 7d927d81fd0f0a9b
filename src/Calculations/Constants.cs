namespace Calculations;

/// <summary>Physical and conversion constants, each with its source. Oxygen in air stands in <see cref="OxygenInAir"/>.</summary>
public static class Constants
{
    /// <summary>Molar gas constant, J/(mol K): CODATA 2018 (exact in the SI of 2019, cut at ten digits).</summary>
    public const double GasConstantJPerMolK = 8.314462618;

    /// <summary>Standard atmosphere, Pa: ISO 2533; also the reference pressure of ISO 6976 and EN 437.</summary>
    public const double StandardPressurePa = 101_325;

    /// <summary>Standard atmosphere, mbar.</summary>
    public const double StandardPressureMbar = 1013.25;

    /// <summary>0 degree Celsius in kelvin: SI brochure.</summary>
    public const double ZeroCelsiusK = 273.15;

    /// <summary>Standard gravity, m/s2: third CGPM, 1901.</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Specific gas constant of dry air, J/(kg K): R / M with M = 28.96546 kg/kmol of ISO 6976:2016.</summary>
    public const double AirGasConstantJPerKgK = GasConstantJPerMolK / 28.96546e-3;

    /// <summary>MJ in a kWh: definition.</summary>
    public const double MjPerKwh = 3.6;

    /// <summary>Molar mass of water, kg/mol: ISO 6976:2016 table A.2.</summary>
    public const double WaterKgPerMol = 18.01528e-3;

    /// <summary>Molar mass of carbon monoxide, g/mol: ISO 6976:2016 table A.2.</summary>
    public const double CarbonMonoxideGPerMol = 28.0101;

    internal static double Kelvin(double celsius) => celsius + ZeroCelsiusK;
}
