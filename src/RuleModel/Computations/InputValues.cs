using Calculations;

namespace RuleModel;

/// <summary>The values of a computation's inputs by name. They are few, so that a list is searched faster than a table.</summary>
public sealed class InputValues
{
    private readonly List<KeyValuePair<string, object>> _values;

    private InputValues(List<KeyValuePair<string, object>> values) => _values = values;

    /// <summary><paramref name="given"/> with the defaults of what was not given.</summary>
    internal static InputValues Of(Computation computation, IReadOnlyDictionary<string, object> given) =>
        new InputValues([.. given]).WithDefaultsOf(computation);

    /// <summary>The same for a figure; null while one of <paramref name="givens"/> has no value.</summary>
    internal static InputValues? Of(Computation computation, IReadOnlyList<Given> givens)
    {
        var values = new List<KeyValuePair<string, object>>(computation.Inputs.Count);
        foreach (var given in givens)
        {
            if (given.Value is null)
                return null;
            values.Add(new(given.Name, given.Value));
        }

        return new InputValues(values).WithDefaultsOf(computation);
    }

    /// <summary>Is there a value?</summary>
    public bool Has(string name) => Find(name) is not null;

    /// <summary>The value itself, or null.</summary>
    public object? Find(string name)
    {
        foreach (var (known, value) in _values)
        {
            if (known == name)
                return value;
        }

        return null;
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
            moved[moved.FindIndex(value => value.Key == names[i])] = new(names[i], (decimal)numbers[i]);
        return new InputValues(moved);
    }

    private object Given(string name) => Find(name) ?? throw new KeyNotFoundException($"There is no value '{name}'.");

    private InputValues WithDefaultsOf(Computation computation)
    {
        foreach (var input in computation.Inputs)
        {
            if (input.BoxedDefault is { } standard && !Has(input.Name))
                _values.Add(new(input.Name, standard));
        }

        return this;
    }
}
