using System.Numerics;

namespace Calculations;

/// <summary>
/// How many of a population to look at again, and what the visits then show of the whole: exact, one-sided, without an approximation by
/// another distribution. The wanted chance is a decimal and a tie counts as reached.
/// </summary>
public static class Inspection
{
    /// <summary>Highest confidence that a sample may be asked for, in percent.</summary>
    public const decimal HighestConfidencePercent = 99.9999m;

    /// <summary>Most faults that a sample may be allowed to show.</summary>
    public const int MostAllowed = 10;

    /// <summary>Least share for which a sample of an unlimited population is sized, in percent.</summary>
    public const decimal LeastSharePercent = 0.1m;

    /// <summary>Most visits that an upper bound is worked out from.</summary>
    public const int MostVisited = 10_000;

    /// <summary>
    /// The fewest to draw, so that a population with <paramref name="tolerable"/> or more faulty ones would show more than
    /// <paramref name="allowed"/> faults with the stated confidence: the least n with P(X at most allowed) at most 1 - confidence,
    /// X hypergeometric.
    /// </summary>
    /// <param name="population">How many there are, from 1 to <see cref="Hypergeometric.LargestPopulation"/>.</param>
    /// <param name="tolerable">From how many faulty ones on the sample is to show it, above <paramref name="allowed"/>, at most the population.</param>
    /// <param name="confidencePercent">Above 0, at most <see cref="HighestConfidencePercent"/>.</param>
    /// <param name="allowed">Faults that the sample may show all the same, from 0 to <see cref="MostAllowed"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static int SampleSize(int population, int tolerable, decimal confidencePercent, int allowed = 0)
    {
        Guard.Within(population, 1, Hypergeometric.LargestPopulation);
        Guard.Within(allowed, 0, MostAllowed);
        Guard.Within(tolerable, allowed + 1, population);
        var doubt = DoubtOf(confidencePercent);
        return Least(allowed + 1, population, drawn => Hypergeometric.IsAtMost(population, tolerable, drawn, allowed, doubt));
    }

    /// <summary>As <see cref="SampleSize"/>, of a population without end: X is binomial.</summary>
    /// <param name="tolerablePercent">From which share of faulty ones on the sample is to show it, from <see cref="LeastSharePercent"/> to 100.</param>
    /// <param name="confidencePercent">Above 0, at most <see cref="HighestConfidencePercent"/>.</param>
    /// <param name="allowed">Faults that the sample may show all the same, from 0 to <see cref="MostAllowed"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static int SampleSizeOfUnlimited(decimal tolerablePercent, decimal confidencePercent, int allowed = 0)
    {
        Guard.Within(tolerablePercent, LeastSharePercent, 100);
        Guard.Within(allowed, 0, MostAllowed);
        var doubt = DoubtOf(confidencePercent);
        var share = tolerablePercent / 100;
        var most = allowed + 1;
        while (!Binomial.IsAtMost(share, most, allowed, doubt))
            most *= 2;
        return Least(allowed + 1, most, drawn => Binomial.IsAtMost(share, drawn, allowed, doubt));
    }

    /// <summary>
    /// Exact upper bound of how many of the whole population are faulty, after <paramref name="visited"/> of them, drawn at random, were
    /// looked at: the greatest D with P(X at most found | D) above 1 - confidence.
    /// </summary>
    /// <param name="population">How many there are, from 1 to <see cref="Hypergeometric.LargestPopulation"/>.</param>
    /// <param name="visited">How many were looked at, from 1 to the population, at most <see cref="MostVisited"/>.</param>
    /// <param name="found">How many of these were faulty, from 0 to <paramref name="visited"/>.</param>
    /// <param name="confidencePercent">Above 0, at most <see cref="HighestConfidencePercent"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static int UpperBound(int population, int visited, int found, decimal confidencePercent)
    {
        Guard.Within(population, 1, Hypergeometric.LargestPopulation);
        Guard.Within(visited, 1, Math.Min(population, MostVisited));
        Guard.Within(found, 0, visited);
        var doubt = DoubtOf(confidencePercent);
        var most = population - visited + found;
        return Least(found, most + 1, faulty => faulty > most || Hypergeometric.IsAtMost(population, faulty, visited, found, doubt)) - 1;
    }

    /// <summary>How many of a population the share stands for: the least whole number that is no smaller.</summary>
    /// <param name="population">How many there are, from 1 to <see cref="Hypergeometric.LargestPopulation"/>.</param>
    /// <param name="sharePercent">The share, above 0, at most 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static int CountOfShare(int population, decimal sharePercent) => (int)decimal.Ceiling(
        Guard.Above(sharePercent, 0, 100) / 100 * Guard.Within(population, 1, Hypergeometric.LargestPopulation));

    private static decimal DoubtOf(decimal confidencePercent) => 1 - (Guard.Above(confidencePercent, 0, HighestConfidencePercent) / 100);

    /// <summary>The least number for which <paramref name="holds"/>, which holds for all above it, and for <paramref name="high"/> at the latest.</summary>
    private static int Least(int low, int high, Func<int, bool> holds)
    {
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            if (holds(middle))
                high = middle;
            else
                low = middle + 1;
        }

        return low;
    }

    /// <summary>Draws from a population without end.</summary>
    private static class Binomial
    {
        public static bool IsAtMost(decimal share, int drawn, int found, decimal chance)
        {
            var near = AtMost((double)share, drawn, found);
            return Math.Abs(near - (double)chance) > Hypergeometric.TooNear * (double)chance ? near < (double)chance : IsExactlyAtMost(share, drawn, found, chance);
        }

        private static double AtMost(double share, int drawn, int found)
        {
            if (found >= drawn || share >= 1)
                return found >= drawn ? 1 : 0;
            var (logChance, sum) = (drawn * Math.Log(1 - share), 0.0);
            for (var k = 0; k <= found; k++)
            {
                sum += Math.Exp(logChance);
                logChance += Math.Log((double)(drawn - k) / (k + 1) * share / (1 - share));
            }

            return sum;
        }

        private static bool IsExactlyAtMost(decimal share, int drawn, int found, decimal chance)
        {
            var (faulty, of) = Rational.Of(share);
            var (sum, choose) = (BigInteger.Zero, BigInteger.One);
            for (var k = 0; k <= Math.Min(found, drawn); k++)
            {
                sum += choose * BigInteger.Pow(faulty, k) * BigInteger.Pow(of - faulty, drawn - k);
                choose = choose * (drawn - k) / (k + 1);
            }

            var (numerator, denominator) = Rational.Of(chance);
            return sum * denominator <= numerator * BigInteger.Pow(of, drawn);
        }
    }
}
