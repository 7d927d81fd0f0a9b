using Calculations;
using Findings;
using Kernel;

namespace Visits.Computations;

/// <summary>A value that goes into a figure: from the record, from another figure, or a constant.</summary>
/// <param name="Name">Input of the computation.</param>
/// <param name="Value">The value; null where the record does not carry it.</param>
internal sealed record Given(string Name, object? Value)
{
    private MemberPath? Member { get; init; }

    private string Subject { get; init; } = "";

    private Figure? Figure { get; init; }

    private IReadOnlyList<string> At { get; init; } = [];

    /// <summary>Where it stands in the record; none for a constant.</summary>
    public IReadOnlyList<string> Pointers => field ??= Member is not null ? [Member.Below(Subject)] : Figure?.Inputs ?? At;

    /// <summary>Does somebody give it, so that it is neither a default nor a constant of the service?</summary>
    public bool IsStated { get => field || Member is not null || Pointers.Count > 0; init; }

    /// <summary>Standard uncertainty; null where none is stated.</summary>
    public double? Uncertainty { get; init; }

    /// <summary>True for a setting, a choice or a constant, which carries no uncertainty of measurement.</summary>
    public bool IsExact { get; init; }

    /// <summary>A number of the record.</summary>
    public static Given Of(MemberPath member, string subject, decimal? value) => new(member.Name, value) { Member = member, Subject = subject };

    /// <summary>A number that no instrument of the record measured.</summary>
    public static Given Constant(string name, decimal? value) => new(name, value) { IsExact = true };

    /// <summary>A number made of several of the record that no instrument measured.</summary>
    public static Given Made(string name, decimal? value, IReadOnlyList<string> pointers) => new(name, value) { At = pointers, IsExact = true };

    /// <summary>The result of another figure.</summary>
    public static Given Of(string name, Figure? figure) => new(name, figure?.Value) { Figure = figure, Uncertainty = (double?)figure?.Uncertainty };

    /// <summary>The fuel; null where the record does not name it.</summary>
    public static Given Fuel(GasFamily? gas) => new("fuel", gas) { At = FuelPointer, IsExact = true };

    /// <summary>A day.</summary>
    public static Given Day(string name, DateOnly? day, params string[] pointers) => new(name, day) { At = pointers, IsExact = true };

    /// <summary>The same under the name that the computation has for it.</summary>
    public Given As(string name) => this with { Name = name };

    /// <summary>The same as a setting that is not measured.</summary>
    public Given Exact => this with { IsExact = true };

    private static IReadOnlyList<string> FuelPointer { get; } = ["/appliance/fuel"];
}
