namespace Calculations;

/// <summary>A fuel gas: mole fractions of its components, which sum to one.</summary>
public sealed class FuelGas
{
    private readonly (GasComponent Component, double Fraction)[] parts;

    /// <summary>Takes mole fractions, dimensionless, each 0 to 1, summing to 1 within 0.0001; they are then scaled to sum to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A fraction or the sum is outside its range.</exception>
    public FuelGas(IEnumerable<KeyValuePair<GasComponent, double>> moleFractions)
    {
        var given = moleFractions.Select(part => (part.Key, Guard.Within(part.Value, 0.0, 1.0, nameof(moleFractions)))).ToArray();
        var sum = Guard.Within(given.Sum(part => part.Item2), 0.9999, 1.0001, nameof(moleFractions));
        parts = [.. given.Select(part => (part.Key, part.Item2 / sum))];
        Carbon = Mean(component => component.Atoms().Carbon);
        HydrogenPairs = Mean(component => component.Atoms().Hydrogen / 2.0);
        NitrogenPairs = Mean(component => component.Atoms().Nitrogen / 2.0);
        OxygenDemand = Mean(component => component.Atoms().Carbon + component.Atoms().Hydrogen / 4.0 - component.Atoms().Oxygen / 2.0);
    }

    /// <summary>Reference gas of natural gas, second family, group H: methane (EN 437).</summary>
    public static FuelGas G20 { get; } = Of((GasComponent.Methane, 1));

    /// <summary>Natural gas, group L: 86 % methane, 14 % nitrogen (EN 437).</summary>
    public static FuelGas G25 { get; } = Of((GasComponent.Methane, 0.86), (GasComponent.Nitrogen, 0.14));

    /// <summary>Butane: half n-butane, half i-butane (EN 437).</summary>
    public static FuelGas G30 { get; } = Of((GasComponent.NButane, 0.5), (GasComponent.IsoButane, 0.5));

    /// <summary>Propane (EN 437).</summary>
    public static FuelGas G31 { get; } = Of((GasComponent.Propane, 1));

    /// <summary>A mixture from pairs of component and mole fraction.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A fraction or the sum is outside its range.</exception>
    public static FuelGas Of(params (GasComponent Component, double Fraction)[] parts) =>
        new(parts.Select(part => KeyValuePair.Create(part.Component, part.Fraction)));

    /// <summary>The reference gas that stands for a fuel of a service record.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a gas family.</exception>
    public static FuelGas Of(GasFamily gas) => gas switch
    {
        GasFamily.NaturalGas => G20,
        GasFamily.Propane => G31,
        GasFamily.Butane => G30,
        _ => throw new ArgumentOutOfRangeException(nameof(gas), gas, "Not a gas family."),
    };

    /// <summary>Carbon, mol per mol gas.</summary>
    internal double Carbon { get; }

    /// <summary>Half the hydrogen atoms, mol per mol gas.</summary>
    internal double HydrogenPairs { get; }

    /// <summary>Half the nitrogen atoms, mol per mol gas.</summary>
    internal double NitrogenPairs { get; }

    /// <summary>Oxygen demand, mol per mol gas; see <see cref="Stoichiometry.OxygenDemand"/>.</summary>
    internal double OxygenDemand { get; }

    /// <summary>Kept by <see cref="CalorificValue.OfFuel"/>, which is asked for every flue reading.</summary>
    internal GasProperties? PropertiesAsFuel { get; set; }

    /// <summary>The mean of a component property, weighted by mole fraction.</summary>
    public double Mean(Func<GasComponent, double> property) => parts.Sum(part => part.Fraction * property(part.Component));
}
