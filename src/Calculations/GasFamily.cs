namespace Calculations;

/// <summary>The fuels of a service record.</summary>
public enum GasFamily
{
    /// <summary>Natural gas, reference gas G20.</summary>
    NaturalGas,

    /// <summary>Propane, reference gas G31.</summary>
    Propane,

    /// <summary>Butane, reference gas G30.</summary>
    Butane,
}

/// <summary>The figures a fuel brings into the formulas for service readings.</summary>
public static class GasFamilies
{
    /// <summary>
    /// Gross heat divided by net heat, the trade's rounded divisor: 1.11, 1.09, 1.08 (common practice, no source).
    /// By ISO 6976:2016: 1.1107, 1.0869, 1.0837.
    /// </summary>
    public static decimal GrossToNet(this GasFamily gas) => gas switch
    {
        GasFamily.NaturalGas => 1.11m,
        GasFamily.Propane => 1.09m,
        GasFamily.Butane => 1.08m,
        _ => throw Unknown(gas),
    };

    /// <summary>
    /// CO2 of dry flue gas without excess air, volume per cent: 11.70, 13.72, 14.02. Stoichiometry of pure methane, propane and butane
    /// with 20.95 % oxygen in air.
    /// </summary>
    public static decimal Co2MaxPercent(this GasFamily gas) => gas switch
    {
        GasFamily.NaturalGas => 11.70m,
        GasFamily.Propane => 13.72m,
        GasFamily.Butane => 14.02m,
        _ => throw Unknown(gas),
    };

    private static ArgumentOutOfRangeException Unknown(GasFamily gas) => new(nameof(gas), gas, "Not a gas family.");
}
