using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Kernel;
using Records.Faults;

namespace Visits.Computations;

/// <summary>
/// One computation as data: what it needs, in which ranges, what it gives and where its formula stands. Figures of a record and the
/// service's own route both run it from here.
/// </summary>
public sealed partial class Computation
{
    // Results of scientific functions are cut to this many digits, so that they are the same on every machine.
    private const int DigitsOfReal = 9;

    /// <summary>Name, in figures and in the route.</summary>
    public required string Name { get; init; }

    /// <summary>What it works out, in words.</summary>
    public required string What { get; init; }

    /// <summary>Its inputs.</summary>
    public required ImmutableArray<ComputationInput> Inputs { get; init; }

    /// <summary>Unit (UCUM) of the result; null where it is a day.</summary>
    public string? Unit { get; init; }

    /// <summary>
    /// The formula in words, each input as its name in braces: <c>{o2Percent}</c> where its value stands in an expression,
    /// <c>{o2Percent:}</c> where it is named in a sentence.
    /// </summary>
    public required string Template { get; init; }

    /// <summary>Where the formula stands.</summary>
    public required string Source { get; init; }

    /// <summary>Constants that go in, each as "name = value unit".</summary>
    public Func<InputValues, IReadOnlyList<string>> Constants { get; init; } = _ => [];

    /// <summary>What must hold between inputs, each in its range: name of the input at fault, the demand in words, and whether it holds.</summary>
    public ImmutableArray<(string Input, string Demand, Func<InputValues, bool> Holds)> Demands { get; init; } = [];

    /// <summary>The result as an exact decimal; this, <see cref="Real"/> or <see cref="Day"/>.</summary>
    public Func<InputValues, decimal>? Exact { get; init; }

    /// <summary>The result of a scientific function.</summary>
    public Func<InputValues, double>? Real { get; init; }

    /// <summary>The result as a day.</summary>
    public Func<InputValues, DateOnly>? Day { get; init; }

    /// <summary>The formula with the names of its inputs.</summary>
    public string Formula => field ??= Placeholder().Replace(Template, "${name}");

    /// <summary>Everything wrong with <paramref name="values"/>; while there is anything, the computation must not be run.</summary>
    public IReadOnlyList<Fault> FaultsOf(InputValues values)
    {
        var faults = Inputs
            .Select(input => values.Find(input.Name) is { } value
                ? input.FaultOf(value)
                : input.IsRequired ? new Fault($"#/{input.Name}", FaultCodes.RequiredMember, $"'{input.Name}' is required: {input.What}.") : null)
            .OfType<Fault>()
            .ToList();
        return faults.Count > 0
            ? faults
            : [.. Demands.Where(demand => !demand.Holds(values)).Select(demand => new Fault($"#/{demand.Input}", FaultCodes.OutOfRange, $"'{demand.Input}' {demand.Demand}."))];
    }

    /// <summary><paramref name="given"/> with the defaults of what was not given.</summary>
    public InputValues Complete(IReadOnlyDictionary<string, object> given) => InputValues.Of(this, given);

    /// <summary>Is there nothing wrong with <paramref name="values"/>? The same as no <see cref="FaultsOf"/>, without their texts.</summary>
    internal bool Accepts(InputValues values)
    {
        foreach (var input in Inputs)
        {
            if (values.Find(input.Name) is { } value ? value is decimal number && !input.Allows(number) : input.IsRequired)
                return false;
        }

        foreach (var (_, _, holds) in Demands)
        {
            if (!holds(values))
                return false;
        }

        return true;
    }

    /// <summary>The constants that went in, and the value of every input that nobody gave.</summary>
    public IReadOnlyList<string> ConstantsOf(InputValues values)
    {
        List<string>? assumed = null;
        foreach (var input in Inputs)
        {
            if (values.Find(input.Name) is { } value && !values.IsGiven(input.Name))
                (assumed ??= []).Add($"{input.Name} = {Text(value)} {input.Unit}");
        }

        return assumed is null ? Constants(values) : [.. assumed, .. Constants(values)];
    }

    /// <summary>The number, for <paramref name="values"/> without faults; null where the result is a day.</summary>
    public decimal? NumberOf(InputValues values) => Exact is not null ? Exact(values) : Real is not null ? Digits.Keep(Real(values), DigitsOfReal) : null;

    /// <summary>The day, for <paramref name="values"/> without faults; null where the result is a number.</summary>
    public DateOnly? DayOf(InputValues values) => Day?.Invoke(values);

    /// <summary>The formula with the values put in, and what comes out.</summary>
    public string WorkingOf(InputValues values)
    {
        var filled = Placeholder().Replace(Template, match =>
        {
            var name = match.Groups["name"].Value;
            var value = values.Find(name) is { } given ? Text(given) : null;
            return match.Groups["named"].Length == 0 ? value ?? name : value is null ? $"{name} not given" : $"{name} {value}";
        });
        return DayOf(values) is { } day ? $"{filled} = {Text(day)}" : $"{filled} = {Text(NumberOf(values)!.Value)} {Unit}";
    }

    /// <summary>A value as a record writes it, decimals without trailing zeros.</summary>
    internal static string Text(object value) =>
        value is decimal number ? number.ToString("0.############################", CultureInfo.InvariantCulture) : WireText.Of(value);

    [GeneratedRegex(@"\{(?<name>\w+)(?<named>:?)\}", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: Timeout.Infinite)]
    private static partial Regex Placeholder();
}
