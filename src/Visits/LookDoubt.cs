using System.Runtime.CompilerServices;
using Kernel;
using Visits.Facts;

namespace Visits;

/// <summary>How sure what a rule looks at is.</summary>
public static class LookDoubt
{
    /// <summary>How sure a number of the record is, by the accuracy that its instrument states; null where none is stated.</summary>
    public static Doubt? DoubtOf(this Look look, Visit visit, [NamesMember] decimal? value, [CallerArgumentExpression(nameof(value))] string path = "")
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(visit);
        return value is { } number && visit.StatesAccuracy
            ? visit.DoubtOf(StatedAccuracy.UncertaintyOf(visit.Record, MemberPath.Of(path).Below(look.Subject), number))
            : null;
    }

    /// <summary>How sure the figure <paramref name="name"/> for this subject is; null where it has no uncertainty.</summary>
    public static Doubt? DoubtOf(this Look look, Visit visit, string name)
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(visit);
        if (!visit.StatesAccuracy)
            return null;

        var figure = visit.Figures.FirstOrDefault(figure => figure.Name == name && figure.Subject == look.Subject);
        return visit.DoubtOf((double?)figure?.Uncertainty);
    }
}
