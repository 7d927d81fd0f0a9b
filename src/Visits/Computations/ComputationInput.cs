using System.Globalization;
using Calculations;
using Records.Faults;

namespace Visits.Computations;

/// <summary>What kind of value an input takes.</summary>
public enum InputKind
{
    /// <summary>A number in the input's unit.</summary>
    Number,

    /// <summary>A fuel by its name in a record.</summary>
    Fuel,

    /// <summary>A day of the calendar.</summary>
    Day,
}

/// <summary>One input of a computation: its name with the unit in it, and the range outside which the formula says nothing.</summary>
public sealed record ComputationInput
{
    /// <summary>Name; that of the record's member where there is one.</summary>
    public required string Name { get; init; }

    /// <summary>What it is, in words.</summary>
    public required string What { get; init; }

    /// <summary>Kind of value.</summary>
    public InputKind Kind { get; private init; }

    /// <summary>Unit (UCUM) of a number.</summary>
    public string? Unit { get; private init; }

    /// <summary>Lowest number.</summary>
    public decimal? Min { get; private init; }

    /// <summary>Highest number.</summary>
    public decimal? Max { get; private init; }

    /// <summary>True where the number must lie above <see cref="Min"/>.</summary>
    public bool MinExcluded { get; private init; }

    /// <summary>The number taken where none is given.</summary>
    public decimal? Default { get; init; }

    internal object? BoxedDefault => field ??= Default;

    /// <summary>True where the computation can do without it.</summary>
    public bool IsOptional { get; init; }

    /// <summary>A value to try it with: a decimal, a <see cref="GasFamily"/> or a <see cref="DateOnly"/>.</summary>
    public required object Example { get; init; }

    /// <summary>Must a value be given?</summary>
    public bool IsRequired => Default is null && !IsOptional;

    /// <summary>A number, both ends of its range included.</summary>
    public static ComputationInput Within(string name, string unit, decimal min, decimal max, decimal example, string what) =>
        new() { Name = name, Unit = unit, Min = min, Max = max, Example = example, What = what };

    /// <summary>A number above <paramref name="floor"/>.</summary>
    public static ComputationInput Above(string name, string unit, decimal floor, decimal max, decimal example, string what) =>
        Within(name, unit, floor, max, example, what) with { MinExcluded = true };

    /// <summary>The fuel.</summary>
    public static ComputationInput Fuel { get; } = new() { Name = "fuel", Kind = InputKind.Fuel, Example = GasFamily.NaturalGas, What = "the fuel" };

    /// <summary>A day.</summary>
    public static ComputationInput Day(string name, DateOnly example, string what) =>
        new() { Name = name, Kind = InputKind.Day, Example = example, What = what };

    /// <summary>Why <paramref name="value"/> will not do; null when it will.</summary>
    internal Fault? FaultOf(object value) => value is decimal number && !Allows(number)
        ? new Fault($"#/{Name}", FaultCodes.OutOfRange, string.Create(CultureInfo.InvariantCulture, $"{number} is outside the range of the formula; expected {Range}, unit {Unit}."))
        : null;

    internal bool Allows(decimal number) =>
        (MinExcluded ? number > Min : number >= Min) && number <= Max;

    private string Range => string.Create(CultureInfo.InvariantCulture, $"{(MinExcluded ? "above " : "")}{Min} to {Max}");
}
