using Calculations;
using Findings;

namespace RuleModel;

/// <summary>A value that goes into a figure: from the record, from another figure, or a constant.</summary>
/// <param name="Name">Input of the computation.</param>
/// <param name="Value">The value; null where the record does not carry it.</param>
/// <param name="Pointers">Where it stands in the record; none for a constant.</param>
internal sealed record Given(string Name, object? Value, IReadOnlyList<string> Pointers)
{
    /// <summary>Standard uncertainty; null where none is stated.</summary>
    public double? Uncertainty { get; init; }

    /// <summary>True for a setting, a choice or a constant, which carries no uncertainty of measurement.</summary>
    public bool IsExact { get; init; }

    /// <summary>A number that no instrument of the record measured.</summary>
    public static Given Constant(string name, decimal? value) => new(name, value, []) { IsExact = true };

    /// <summary>The result of another figure.</summary>
    public static Given Of(string name, Figure? figure) =>
        new(name, figure?.Value, figure?.Inputs ?? []) { Uncertainty = (double?)figure?.Uncertainty };

    /// <summary>The fuel.</summary>
    public static Given Fuel(Visit visit) => new("fuel", (GasFamily?)visit.GasFamily, ["/appliance/fuel"]) { IsExact = true };

    /// <summary>A day.</summary>
    public static Given Day(string name, DateOnly? day, params string[] pointers) => new(name, day, pointers) { IsExact = true };

    /// <summary>The same under the name that the computation has for it.</summary>
    public Given As(string name) => this with { Name = name };

    /// <summary>The same as a setting that is not measured.</summary>
    public Given Exact => this with { IsExact = true };
}
