using System.Runtime.CompilerServices;
using Calculations;
using Findings;

namespace RuleModel;

/// <summary>Where the figures of one visit are worked out, each from a <see cref="Computation"/> and values of the record.</summary>
internal sealed class Worksheet(Visit visit)
{
    // Uncertainties are estimates; more digits would only look better.
    private const int DigitsOfUncertainty = 4;

    private readonly List<Figure> _figures = [];

    public Visit Visit => visit;

    public IReadOnlyList<Figure> Figures => _figures;

    /// <summary>
    /// A number of the record, named by the expression that reads it, as <see cref="Look"/> does; below <paramref name="subject"/>
    /// where the expression begins with a subject.
    /// </summary>
    public Given Read(decimal? value, string subject = "", [CallerArgumentExpression(nameof(value))] string path = "")
    {
        var pointer = MemberPath.Of(path).Below(subject);
        return new Given(pointer[(pointer.LastIndexOf('/') + 1)..], value, [pointer])
        {
            Uncertainty = value is { } number ? StatedAccuracy.UncertaintyOf(visit, pointer, number) : null,
        };
    }

    /// <summary>
    /// Works out a figure and keeps it; null, and nothing kept, while a value is absent or outside the range of the formula. A name of
    /// its own is for the rare figure that another computation gives.
    /// </summary>
    public Figure? Add(Computation computation, string subject, IReadOnlyList<Given> givens, string? name = null)
    {
        if (givens.Any(given => given.Value is null))
            return null;

        var values = computation.Complete(givens.ToDictionary(given => given.Name, given => given.Value!, StringComparer.Ordinal));
        if (computation.FaultsOf(values).Count > 0)
            return null;

        var constants = computation.Inputs
            .Where(input => values.Has(input.Name) && !givens.Any(given => given.Name == input.Name && given.Pointers.Count > 0))
            .Select(input => $"{input.Name} = {Computation.Text(values.Find(input.Name)!)} {input.Unit}")
            .Concat(computation.Constants(values))
            .ToList();
        var figure = new Figure
        {
            Name = name ?? computation.Name,
            Subject = subject,
            Value = computation.NumberOf(values),
            Date = computation.DayOf(values),
            Unit = computation.Unit,
            Uncertainty = computation.Unit is null ? null : UncertaintyOf(computation, values, givens),
            Formula = computation.Formula,
            Inputs = [.. givens.SelectMany(given => given.Pointers).Distinct(StringComparer.Ordinal)],
            Constants = constants.Count > 0 ? constants : null,
            Source = computation.Source,
        };
        _figures.Add(figure);
        return figure;
    }

    /// <summary>
    /// Propagated from every measured input. Where one of them states no accuracy there is none to give: to leave it out would make the
    /// figure look surer than it is.
    /// </summary>
    private static decimal? UncertaintyOf(Computation computation, InputValues values, IReadOnlyList<Given> givens)
    {
        var measured = givens.Where(given => !given.IsExact).ToList();
        if (measured.Count == 0 || measured.Any(given => given.Uncertainty is null))
            return null;

        var names = measured.ConvertAll(given => given.Name);
        var inputs = measured.ConvertAll(given => Inside(computation.Inputs.First(input => input.Name == given.Name), (decimal)given.Value!, given.Uncertainty!.Value));
        if (inputs.Exists(input => input is null) || !CanMove(computation, values, names, inputs!))
            return null;

        var uncertainty = Uncertainty.Combined(x => (double)computation.NumberOf(values.With(names, x))!.Value, inputs!);
        return Digits.Keep(uncertainty, DigitsOfUncertainty);
    }

    // The slope is taken a fiftieth of the uncertainty inside the formula's range: at CO = 0 there is no slope to the left.
    private static Measured? Inside(ComputationInput input, decimal value, double uncertainty)
    {
        var (low, high) = ((double)input.Min!.Value + uncertainty / 50, (double)input.Max!.Value - uncertainty / 50);
        return low <= high ? new Measured(Math.Clamp((double)value, low, high), uncertainty) : null;
    }

    private static bool CanMove(Computation computation, InputValues values, IReadOnlyList<string> names, IReadOnlyList<Measured> inputs)
    {
        var at = inputs.Select(input => input.Value).ToArray();
        for (var i = 0; i < inputs.Count; i++)
        {
            foreach (var step in new[] { -inputs[i].StandardUncertainty / 100, inputs[i].StandardUncertainty / 100 })
            {
                at[i] = inputs[i].Value + step;
                if (computation.FaultsOf(values.With(names, at)).Count > 0)
                    return false;
            }

            at[i] = inputs[i].Value;
        }

        return true;
    }
}
