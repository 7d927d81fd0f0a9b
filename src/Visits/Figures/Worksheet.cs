using System.Runtime.CompilerServices;
using Findings;
using Kernel;
using Visits.Computations;
using Visits.Facts;

namespace Visits.Figures;

/// <summary>Where the figures of one visit are worked out, each from a <see cref="Computation"/> and values of the record.</summary>
internal sealed class Worksheet(Visit visit)
{
    private readonly List<Figure> _figures = [];

    public Visit Visit => visit;

    public IReadOnlyList<Figure> Figures => _figures;

    /// <summary>The fuel.</summary>
    public Given Fuel => Given.Fuel(visit.Appliance.Fuel is null ? null : visit.GasFamily);

    /// <summary>
    /// A number of the record, named by the expression that reads it, as <see cref="Look"/> does; below <paramref name="subject"/>
    /// where the expression begins with a subject.
    /// </summary>
    public Given Read(decimal? value, string subject = "", [CallerArgumentExpression(nameof(value))] string path = "")
    {
        var given = Given.Of(MemberPath.Of(path), subject, value);
        return visit.StatesAccuracy && value is { } number ? given with { Uncertainty = StatedAccuracy.UncertaintyOf(visit.Record, given.Pointers[0], number) } : given;
    }

    /// <summary>Keeps a figure that was looked up, not worked out.</summary>
    public void Add(Figure figure) => _figures.Add(figure);

    /// <summary>
    /// Works out a figure and keeps it; null, and nothing kept, while a value is absent or outside the range of the formula. A name of
    /// its own is for the rare figure that another computation gives.
    /// </summary>
    public Figure? Add(Computation computation, string subject, Given[] givens, string? name = null)
    {
        if (InputValues.Of(computation, givens) is not { } values || !computation.Accepts(values))
            return null;

        var figure = new Figure(name ?? computation.Name, subject, values)
        {
            Value = computation.NumberOf(values),
            Date = computation.DayOf(values),
            Uncertainty = Propagation.UncertaintyOf(computation, values, givens),
        };
        _figures.Add(figure);
        return figure;
    }
}
