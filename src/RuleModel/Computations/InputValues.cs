using Calculations;

namespace RuleModel;

/// <summary>The values of a computation's inputs by name. They are few, so that a list is searched faster than a table.</summary>
public sealed class InputValues
{
    private readonly List<Known> _values;

    private InputValues(List<Known> values) => _values = values;

    /// <summary><paramref name="given"/> with the defaults of what was not given.</summary>
    internal static InputValues Of(Computation computation, IReadOnlyDictionary<string, object> given) =>
        new InputValues([.. given.Select(one => new Known(one.Key, one.Value, IsGiven: true))]).WithDefaultsOf(computation);

    /// <summary>The same for a figure; null while one of <paramref name="givens"/> has no value.</summary>
    internal static InputValues? Of(Computation computation, Given[] givens)
    {
        var values = new List<Known>(computation.Inputs.Length);
        foreach (var given in givens)
        {
            if (given.Value is null)
                return null;
            values.Add(new Known(given.Name, given.Value, given.Pointers.Count > 0));
        }

        return new InputValues(values).WithDefaultsOf(computation);
    }

    /// <summary>Is there a value?</summary>
    public bool Has(string name) => Find(name) is not null;

    /// <summary>The value itself, or null.</summary>
    public object? Find(string name)
    {
        foreach (var known in _values)
        {
            if (known.Name == name)
                return known.Value;
        }

        return null;
    }

    /// <summary>Is there a value that somebody gave, and neither a default nor a constant of the service?</summary>
    internal bool IsGiven(string name)
    {
        foreach (var known in _values)
        {
            if (known.Name == name)
                return known.IsGiven;
        }

        return false;
    }

    /// <summary>A number as it was given.</summary>
    public decimal Exact(string name) => (decimal)Given(name);

    /// <summary>
    /// A number for a scientific function: the nearest double. The framework's own conversion can end a step beyond it, which would
    /// leave a value that lies inside a range outside.
    /// </summary>
    public double Real(string name) => Digits.Nearest(Exact(name));

    /// <summary>A fuel.</summary>
    public GasFamily Gas(string name = "fuel") => (GasFamily)Given(name);

    /// <summary>A day.</summary>
    public DateOnly Day(string name) => (DateOnly)Given(name);

    /// <summary>The same with other numbers for some.</summary>
    internal InputValues With(IReadOnlyList<string> names, IReadOnlyList<double> numbers)
    {
        var moved = _values.ToList();
        for (var i = 0; i < names.Count; i++)
            moved[moved.FindIndex(value => value.Name == names[i])] = new Known(names[i], (decimal)numbers[i], IsGiven: true);
        return new InputValues(moved);
    }

    private object Given(string name) => Find(name) ?? throw new KeyNotFoundException($"There is no value '{name}'.");

    private InputValues WithDefaultsOf(Computation computation)
    {
        foreach (var input in computation.Inputs)
        {
            if (input.BoxedDefault is { } standard && !Has(input.Name))
                _values.Add(new Known(input.Name, standard, IsGiven: false));
        }

        return this;
    }

    private readonly record struct Known(string Name, object Value, bool IsGiven);
}
