using System.Numerics;

namespace Calculations;

/// <summary>
/// The Mann-Kendall test of a trend, exact, one-sided. Values in the order of time; no assumption on their distribution. Source: Mann,
/// Econometrica 13 (1945) 245, and Kendall, Rank Correlation Methods; the counting by inversions of a sequence with equal values is
/// MacMahon's (from memory).
/// </summary>
public static class MannKendall
{
    /// <summary>Fewest values of which a trend can be spoken: of three, even a strict order happens by chance once in six.</summary>
    public const int FewestValues = 4;

    /// <summary>Most values that are taken: all orders are counted exactly, which grows fast.</summary>
    public const int MostValues = 60;

    /// <summary>S: how many pairs rise less how many fall; equal values count for neither.</summary>
    /// <param name="values">Two or more values in the order of time, any unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 values or more than 60, or one is not a number.</exception>
    public static int Score(IReadOnlyList<double> values)
    {
        Demand(values);
        var score = 0;
        for (var later = 1; later < values.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
                score += values[later].CompareTo(values[earlier]);
        }

        return score;
    }

    /// <summary>
    /// Probability that values without a trend, in random order, reach a score of at least this one: p of the one-sided test for a rise,
    /// 0 to 1. Equal values are taken as they are: all orders of the values at hand, equal ones among them, are equally likely. For a
    /// fall, negate the values.
    /// </summary>
    /// <param name="values">Two or more values in the order of time, any unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 values or more than 60, or one is not a number.</exception>
    public static double ProbabilityOfRise(IReadOnlyList<double> values)
    {
        var score = Score(values);
        var groups = values.GroupBy(value => value).Select(group => group.Count()).ToList();
        var orders = OrdersByInversions(groups);

        // Each pair of different values either rises or is an inversion: S = pairs - 2 inversions.
        var pairs = orders.Length - 1;
        var reaching = BigInteger.Zero;
        for (var inversions = 0; pairs - 2 * inversions >= score && inversions <= pairs; inversions++)
            reaching += orders[inversions];

        return Math.Exp(BigInteger.Log(reaching) - BigInteger.Log(orders.Aggregate(BigInteger.Add)));
    }

    /// <summary>How many orders of the values have 0, 1, 2, ... inversions: the coefficients of the q-multinomial of the group sizes.</summary>
    private static BigInteger[] OrdersByInversions(List<int> groups)
    {
        BigInteger[] orders = [1];
        var placed = 0;
        foreach (var size in groups)
        {
            // The q-binomial of (placed + size) over size, factor by factor: times (1 - q^(placed + i)), by (1 - q^i).
            for (var i = 1; i <= size; i++)
                orders = DividedBy(Times(orders, placed + i), i);
            placed += size;
        }

        return orders;
    }

    private static BigInteger[] Times(BigInteger[] polynomial, int power)
    {
        var product = new BigInteger[polynomial.Length + power];
        for (var i = 0; i < polynomial.Length; i++)
        {
            product[i] += polynomial[i];
            product[i + power] -= polynomial[i];
        }

        return product;
    }

    private static BigInteger[] DividedBy(BigInteger[] polynomial, int power)
    {
        var quotient = new BigInteger[polynomial.Length - power];
        for (var i = 0; i < quotient.Length; i++)
            quotient[i] = polynomial[i] + (i >= power ? quotient[i - power] : 0);
        return quotient;
    }

    private static void Demand(IReadOnlyList<double> values)
    {
        Guard.Within(values.Count, 2, MostValues, nameof(values));
        foreach (var value in values)
            Guard.Within(value, double.MinValue, double.MaxValue, nameof(values));
    }
}
