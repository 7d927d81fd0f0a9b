using Records;
using Visits.Computations;
using Wire;

namespace ComplianceApi.Api.Calculations;

/// <summary>A computation that can be asked for by name.</summary>
public sealed record CalculationView
{
    /// <summary>Name; the figures of an evaluation that it made have the same one.</summary>
    public required string Name { get; init; }

    /// <summary>What it works out.</summary>
    public required string What { get; init; }

    /// <summary>What it needs.</summary>
    public required IReadOnlyList<CalculationInputView> Inputs { get; init; }

    /// <summary>Unit of the result (UCUM); absent where it is a day.</summary>
    public string? Unit { get; init; }

    /// <summary>The formula in words, inputs by their names.</summary>
    public required string Formula { get; init; }

    /// <summary>Where the formula stands.</summary>
    public required string Source { get; init; }

    internal static CalculationView Of(Computation computation) => new()
    {
        Name = computation.Name,
        What = computation.What,
        Inputs = [.. computation.Inputs.Select(CalculationInputView.Of)],
        Unit = computation.Unit,
        Formula = computation.Formula,
        Source = computation.Source,
    };
}

/// <summary>An input of a computation.</summary>
public sealed record CalculationInputView
{
    /// <summary>Name of the member in the body.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required string What { get; init; }

    /// <summary>Kind of value: number, fuel (a name as in a record) or day (yyyy-MM-dd).</summary>
    public required string Kind { get; init; }

    /// <summary>Unit of a number (UCUM).</summary>
    public string? Unit { get; init; }

    /// <summary>Lowest number that the formula covers.</summary>
    public decimal? Min { get; init; }

    /// <summary>Highest number that the formula covers.</summary>
    public decimal? Max { get; init; }

    /// <summary>True where the number must lie above min.</summary>
    public bool? MinExcluded { get; init; }

    /// <summary>Must it be given?</summary>
    public required bool Required { get; init; }

    /// <summary>The number taken where none is given.</summary>
    public decimal? Default { get; init; }

    /// <summary>The names allowed for a fuel.</summary>
    public IReadOnlyList<string>? AllowedValues { get; init; }

    internal static CalculationInputView Of(ComputationInput input) => new()
    {
        Name = input.Name,
        What = input.What,
        Kind = WireNames.Of(input.Kind),
        Unit = input.Unit,
        Min = input.Min,
        Max = input.Max,
        MinExcluded = input.MinExcluded ? true : null,
        Required = input.IsRequired,
        Default = input.Default,
        AllowedValues = input.Kind == InputKind.Fuel ? WireNames.OfValues(typeof(Fuel)) : null,
    };
}

/// <summary>A result with its working.</summary>
public sealed record CalculationResult
{
    /// <summary>The computation.</summary>
    public required string Name { get; init; }

    /// <summary>The number: exact, or with nine significant digits where the formula is a scientific one. Round it for display only.</summary>
    public decimal? Value { get; init; }

    /// <summary>Or the day.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Unit of the number (UCUM).</summary>
    public string? Unit { get; init; }

    /// <summary>The formula in words.</summary>
    public required string Formula { get; init; }

    /// <summary>Constants and defaults that went in, each as "name = value unit".</summary>
    public required IReadOnlyList<string> Constants { get; init; }

    /// <summary>Where the formula stands.</summary>
    public required string Source { get; init; }

    /// <summary>The formula with the values put in, and what comes out.</summary>
    public required string Working { get; init; }
}
