namespace Calculations;

/// <summary>A slope that single wild values do not move. Source: Theil (1950); Sen, J. Am. Stat. Assoc. 63 (1968) 1379.</summary>
public static class TheilSen
{
    /// <summary>
    /// The median of the slopes of all pairs of points, in the unit of y per unit of x. Pairs at the same x have no slope and are left out;
    /// of an even number of slopes the mean of the middle two.
    /// </summary>
    /// <param name="points">Points, two of them at least at different x.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not a number, or there are no two points at different x.</exception>
    public static double Slope(IReadOnlyList<(double X, double Y)> points)
    {
        var slopes = new List<double>();
        foreach (var (index, one) in points.Index())
        {
            Guard.Within(one.X, double.MinValue, double.MaxValue, nameof(points));
            Guard.Within(one.Y, double.MinValue, double.MaxValue, nameof(points));
            slopes.AddRange(points.Skip(index + 1).Where(other => other.X != one.X).Select(other => (other.Y - one.Y) / (other.X - one.X)));
        }

        Guard.Within(slopes.Count, 1, int.MaxValue, nameof(points));
        slopes.Sort();
        return (slopes[(slopes.Count - 1) / 2] + slopes[slopes.Count / 2]) / 2;
    }
}
