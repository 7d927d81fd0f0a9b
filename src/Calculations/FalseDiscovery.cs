namespace Calculations;

/// <summary>
/// Many tests at once: how many of what they point at may be mere chance. Benjamini and Hochberg, Controlling the false discovery rate,
/// Journal of the Royal Statistical Society B 57 (1995), 289-300.
/// </summary>
public static class FalseDiscovery
{
    /// <summary>
    /// For each p-value the lowest rate of false discoveries at which it is one: the least p(j) m / j of all ranks j from its own upwards,
    /// at most 1. Those at or below the rate q are what the step-up procedure rejects.
    /// </summary>
    /// <param name="chances">The p-values, each from 0 to 1, in any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static IReadOnlyList<double> Adjusted(IReadOnlyList<double> chances)
    {
        ArgumentNullException.ThrowIfNull(chances);
        var adjusted = new double[chances.Count];
        var least = 1.0;
        foreach (var (rank, index) in Enumerable.Range(0, chances.Count).OrderByDescending(index => chances[index]).Select((index, place) => (chances.Count - place, index)))
        {
            var chance = chances[index];
            least = Math.Min(least, Guard.Within(chance, 0, 1) * ((double)chances.Count / rank));
            adjusted[index] = least;
        }

        return adjusted;
    }
}
