using Calculations;
using Findings;

namespace Visits.Computations;

/// <summary>
/// The values of a computation's inputs by name, and its defaults for those that nobody gave. They are few, so that a list is searched
/// faster than a table.
/// </summary>
public sealed class InputValues : IWorking
{
    private readonly Computation _computation;
    private readonly Given[] _givens;
    private IReadOnlyList<string>? _constants;

    private InputValues(Computation computation, Given[] givens) => (_computation, _givens) = (computation, givens);

    /// <summary><paramref name="given"/> with the defaults of what was not given.</summary>
    internal static InputValues Of(Computation computation, IReadOnlyDictionary<string, object> given) =>
        new(computation, [.. given.Select(one => new Given(one.Key, one.Value) { IsStated = true })]);

    /// <summary>The same for a figure; null while one of <paramref name="givens"/> has no value.</summary>
    internal static InputValues? Of(Computation computation, Given[] givens)
    {
        foreach (var given in givens)
        {
            if (given.Value is null)
                return null;
        }

        return new InputValues(computation, givens);
    }

    /// <summary>Is there a value?</summary>
    public bool Has(string name) => Find(name) is not null;

    /// <summary>The value itself, or null.</summary>
    public object? Find(string name)
    {
        foreach (var given in _givens)
        {
            if (given.Name == name)
                return given.Value;
        }

        foreach (var input in _computation.Inputs)
        {
            if (input.Name == name)
                return input.BoxedDefault;
        }

        return null;
    }

    /// <summary>Is there a value that somebody gave, and neither a default nor a constant of the service?</summary>
    internal bool IsGiven(string name)
    {
        foreach (var given in _givens)
        {
            if (given.Name == name)
                return given.IsStated;
        }

        return false;
    }

    /// <summary>A number as it was given.</summary>
    public decimal Exact(string name) => (decimal)ValueOf(name);

    /// <summary>
    /// A number for a scientific function: the nearest double. The framework's own conversion can end a step beyond it, which would
    /// leave a value that lies inside a range outside.
    /// </summary>
    public double Real(string name) => Digits.Nearest(Exact(name));

    /// <summary>A fuel.</summary>
    public GasFamily Gas(string name = "fuel") => (GasFamily)ValueOf(name);

    /// <summary>A day.</summary>
    public DateOnly Day(string name) => (DateOnly)ValueOf(name);

    /// <summary>The same with other numbers for some.</summary>
    internal InputValues With(IReadOnlyList<string> names, IReadOnlyList<double> numbers)
    {
        var moved = _givens.ToArray();
        for (var i = 0; i < names.Count; i++)
        {
            var at = Array.FindIndex(moved, given => given.Name == names[i]);
            moved[at] = moved[at] with { Value = (decimal)numbers[i] };
        }

        return new InputValues(_computation, moved);
    }

    string? IWorking.Unit => _computation.Unit;

    string IWorking.Formula => _computation.Formula;

    IReadOnlyList<string> IWorking.Inputs => field ??= Pointers();

    IReadOnlyList<string>? IWorking.Constants => (_constants ??= _computation.ConstantsOf(this)) is { Count: > 0 } constants ? constants : null;

    string IWorking.Source => _computation.Source;

    private List<string> Pointers()
    {
        var pointers = new List<string>(_givens.Length);
        foreach (var given in _givens)
        {
            foreach (var pointer in given.Pointers)
            {
                if (!pointers.Contains(pointer))
                    pointers.Add(pointer);
            }
        }

        return pointers;
    }

    private object ValueOf(string name) => Find(name) ?? throw new KeyNotFoundException($"There is no value '{name}'.");
}
