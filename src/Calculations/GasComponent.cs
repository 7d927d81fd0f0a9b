namespace Calculations;

/// <summary>The components a fuel gas may be made of.</summary>
public enum GasComponent
{
    /// <summary>CH4.</summary>
    Methane,

    /// <summary>C2H6.</summary>
    Ethane,

    /// <summary>C3H8.</summary>
    Propane,

    /// <summary>n-C4H10.</summary>
    NButane,

    /// <summary>i-C4H10, 2-methylpropane.</summary>
    IsoButane,

    /// <summary>n-C5H12.</summary>
    NPentane,

    /// <summary>i-C5H12, 2-methylbutane.</summary>
    IsoPentane,

    /// <summary>neo-C5H12, 2,2-dimethylpropane.</summary>
    NeoPentane,

    /// <summary>n-C6H14.</summary>
    NHexane,

    /// <summary>C3H6.</summary>
    Propene,

    /// <summary>H2.</summary>
    Hydrogen,

    /// <summary>CO.</summary>
    CarbonMonoxide,

    /// <summary>N2.</summary>
    Nitrogen,

    /// <summary>O2.</summary>
    Oxygen,

    /// <summary>CO2.</summary>
    CarbonDioxide,

    /// <summary>H2O, vapour.</summary>
    Water,
}

/// <summary>Atoms in one molecule.</summary>
[System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Auto)]
public readonly record struct Atoms(int Carbon, int Hydrogen, int Oxygen, int Nitrogen);

/// <summary>What chemistry says of a component.</summary>
public static class GasComponents
{
    /// <summary>The atoms of one molecule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a component.</exception>
    public static Atoms Atoms(this GasComponent component) => component switch
    {
        GasComponent.Methane => new(1, 4, 0, 0),
        GasComponent.Ethane => new(2, 6, 0, 0),
        GasComponent.Propane => new(3, 8, 0, 0),
        GasComponent.NButane or GasComponent.IsoButane => new(4, 10, 0, 0),
        GasComponent.NPentane or GasComponent.IsoPentane or GasComponent.NeoPentane => new(5, 12, 0, 0),
        GasComponent.NHexane => new(6, 14, 0, 0),
        GasComponent.Propene => new(3, 6, 0, 0),
        GasComponent.Hydrogen => new(0, 2, 0, 0),
        GasComponent.CarbonMonoxide => new(1, 0, 1, 0),
        GasComponent.Nitrogen => new(0, 0, 0, 2),
        GasComponent.Oxygen => new(0, 0, 2, 0),
        GasComponent.CarbonDioxide => new(1, 0, 2, 0),
        GasComponent.Water => new(0, 2, 1, 0),
        _ => throw new ArgumentOutOfRangeException(nameof(component), component, "Not a gas component."),
    };
}
