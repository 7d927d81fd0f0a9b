using System.Numerics;

namespace Calculations;

/// <summary>
/// The hypergeometric distribution: how many faulty ones a sample drawn without replacement has. Chances come in double; whether one
/// reaches a bound is decided in whole numbers where the two lie close, so that an exact tie counts as reached.
/// </summary>
public static class Hypergeometric
{
    /// <summary>Greatest population.</summary>
    public const int LargestPopulation = 1_000_000;

    /// <summary>Nearer to a bound than this share of it, double does not decide.</summary>
    internal const double TooNear = 1e-6;

    /// <summary>Chance that at most <paramref name="found"/> of the drawn are faulty: the sum of C(D,k) C(N-D,n-k) / C(N,n).</summary>
    /// <param name="population">N, from 0 to <see cref="LargestPopulation"/>.</param>
    /// <param name="faulty">D, how many of them are faulty, from 0 to N.</param>
    /// <param name="drawn">n, from 0 to N.</param>
    /// <param name="found">Highest k that counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static double AtMost(int population, int faulty, int drawn, int found)
    {
        Demand(population, faulty, drawn);
        var (few, many) = (Math.Min(faulty, drawn), Math.Max(faulty, drawn));
        var least = Math.Max(0, few + many - population);
        if (found < least)
            return 0;
        if (found >= few)
            return 1;

        var logChance = LogChoose(few, least) + LogChoose(population - few, many - least) - LogChoose(population, many);
        var sum = 0.0;
        for (var k = least; k <= found; k++)
        {
            sum += Math.Exp(logChance);
            logChance += Math.Log((double)(few - k) * (many - k) / ((k + 1.0) * (population - few - many + k + 1)));
        }

        return Math.Min(1, sum);
    }

    /// <summary>Whether <see cref="AtMost"/> is no greater than <paramref name="chance"/>; a tie is none greater.</summary>
    internal static bool IsAtMost(int population, int faulty, int drawn, int found, decimal chance)
    {
        var near = AtMost(population, faulty, drawn, found);
        return Math.Abs(near - (double)chance) > TooNear * (double)chance
            ? near < (double)chance
            : IsExactlyAtMost(population, faulty, drawn, found, chance);
    }

    /// <summary>
    /// C(D,k) C(N-D,n-k) / C(N,n) is C(m,k) [M]k [N-M]m-k / [N]m, where m and M are the lesser and the greater of D and n, and [x]i is
    /// x (x-1) ... (x-i+1): few whole factors even in a large population.
    /// </summary>
    private static bool IsExactlyAtMost(int population, int faulty, int drawn, int found, decimal chance)
    {
        var (few, many) = (Math.Min(faulty, drawn), Math.Max(faulty, drawn));
        var least = Math.Max(0, few + many - population);
        var term = Falling(many, least) * Falling(population - many, few - least);
        for (var i = 1; i <= least; i++)
            term = term * (few - i + 1) / i;

        var sum = BigInteger.Zero;
        for (var k = least; k <= Math.Min(found, few); k++)
        {
            sum += term;
            term = term * (few - k) * (many - k) / ((BigInteger)(k + 1) * (population - few - many + k + 1));
        }

        var (numerator, denominator) = Rational.Of(chance);
        return sum * denominator <= numerator * Falling(population, few);
    }

    private static BigInteger Falling(int from, int factors)
    {
        var product = BigInteger.One;
        for (var i = 0; i < factors; i++)
            product *= from - i;
        return product;
    }

    private static double LogChoose(int of, int some) => LogFactorial(of) - LogFactorial(some) - LogFactorial(of - some);

    /// <summary>ln n!, by Stirling's series (Abramowitz and Stegun, 6.1.41) from where its first three terms hold to the last digit.</summary>
    private static double LogFactorial(int n)
    {
        const int Enough = 60;
        if (n < Enough)
        {
            var product = 1.0;
            for (var i = 2; i <= n; i++)
                product *= i;
            return Math.Log(product);
        }

        var square = (double)n * n;
        return ((n + 0.5) * Math.Log(n)) - n + (0.5 * Math.Log(2 * Math.PI)) + ((1 - ((1 - (2 / (7 * square))) / (30 * square))) / (12.0 * n));
    }

    private static void Demand(int population, int faulty, int drawn)
    {
        Guard.Within(population, 0, LargestPopulation);
        Guard.Within(faulty, 0, population);
        Guard.Within(drawn, 0, population);
    }
}
