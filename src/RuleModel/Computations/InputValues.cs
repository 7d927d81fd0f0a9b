using System.Globalization;
using Calculations;

namespace RuleModel;

/// <summary>The values of a computation's inputs by name.</summary>
public sealed class InputValues(IReadOnlyDictionary<string, object> byName)
{
    /// <summary>Is there a value?</summary>
    public bool Has(string name) => byName.ContainsKey(name);

    /// <summary>The value itself, or null.</summary>
    public object? Find(string name) => byName.GetValueOrDefault(name);

    /// <summary>A number as it was given.</summary>
    public decimal Exact(string name) => (decimal)byName[name];

    /// <summary>
    /// A number for a scientific function: the nearest double. The framework's own conversion can end a step beyond it, which would
    /// leave a value that lies inside a range outside.
    /// </summary>
    public double Real(string name) =>
        double.Parse(Exact(name).ToString(CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>A fuel.</summary>
    public GasFamily Gas(string name = "fuel") => (GasFamily)byName[name];

    /// <summary>A day.</summary>
    public DateOnly Day(string name) => (DateOnly)byName[name];

    /// <summary>The same with other numbers for some.</summary>
    internal InputValues With(IReadOnlyList<string> names, IReadOnlyList<double> numbers)
    {
        var moved = new Dictionary<string, object>(byName, StringComparer.Ordinal);
        for (var i = 0; i < names.Count; i++)
            moved[names[i]] = (decimal)numbers[i];
        return new InputValues(moved);
    }
}
