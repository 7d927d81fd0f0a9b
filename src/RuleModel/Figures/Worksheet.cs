using System.Runtime.CompilerServices;
using Findings;

namespace RuleModel;

/// <summary>Where the figures of one visit are worked out, each from a <see cref="Computation"/> and values of the record.</summary>
internal sealed class Worksheet(Visit visit)
{
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

    /// <summary>Keeps a figure that was looked up, not worked out.</summary>
    public void Add(Figure figure) => _figures.Add(figure);

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

        var constants = computation.ConstantsOf(values, name => givens.Any(given => given.Name == name && given.Pointers.Count > 0));
        var figure = new Figure
        {
            Name = name ?? computation.Name,
            Subject = subject,
            Value = computation.NumberOf(values),
            Date = computation.DayOf(values),
            Unit = computation.Unit,
            Uncertainty = Propagation.UncertaintyOf(computation, values, givens),
            Formula = computation.Formula,
            Inputs = [.. givens.SelectMany(given => given.Pointers).Distinct(StringComparer.Ordinal)],
            Constants = constants.Count > 0 ? constants : null,
            Source = computation.Source,
        };
        _figures.Add(figure);
        return figure;
    }
}
