using System.Numerics;

namespace Calculations.Tests;

/// <summary>
/// Where a chance equals the wanted one to the last digit, whole numbers decide: sample sizes and bounds against the definitions of the
/// distributions, counted in whole numbers, for every small population and every chance that a decimal can hold, and just beside it.
/// </summary>
public class TieTests
{
    private const int Largest = 14, MostAllowed = 3;
    private const decimal Beside = 1e-20m;

    [Fact]
    public void In_a_population()
    {
        var ties = 0;
        foreach (var (population, faulty, drawn, found) in
            from n in Enumerable.Range(2, Largest - 1) from d in Enumerable.Range(1, n) from s in Enumerable.Range(1, n) from k in Enumerable.Range(0, s + 1) select (n, d, s, k))
        {
            if (DecimalOf(Within(population, faulty, drawn, found), Choose(population, drawn)) is not (> 0 and < 1 and var tie))
                continue;

            ties++;
            foreach (var doubt in new[] { tie, tie - Beside, tie + Beside })
            {
                var confidence = 100 - (100 * doubt);
                Assert.Equal(
                    Enumerable.Range(0, population + 1).Last(count => IsAbove(Within(population, count, drawn, found), Choose(population, drawn), doubt)),
                    Inspection.UpperBound(population, drawn, found, confidence));
                if (found <= MostAllowed && faulty > found)
                {
                    Assert.Equal(
                        Enumerable.Range(found + 1, population - found).First(size => !IsAbove(Within(population, faulty, size, found), Choose(population, size), doubt)),
                        Inspection.SampleSize(population, faulty, confidence, found));
                }
            }
        }

        Assert.InRange(ties, 100, 10_000);
    }

    [Fact]
    public void In_a_population_without_end()
    {
        foreach (var (percent, drawn, found) in
            from p in new[] { 10m, 12.5m, 20m, 25m, 40m, 50m, 75m, 90m } from s in Enumerable.Range(1, 8) from k in Enumerable.Range(0, Math.Min(s, MostAllowed + 1)) select (p, s, k))
        {
            var tie = DecimalOf(Endless(percent, drawn, found), BigInteger.Pow(1000, drawn))!.Value;
            foreach (var doubt in new[] { tie, tie - Beside, tie + Beside }.Where(doubt => doubt is >= 1e-6m and < 1))
            {
                Assert.Equal(
                    Enumerable.Range(found + 1, 400).First(size => !IsAbove(Endless(percent, size, found), BigInteger.Pow(1000, size), doubt)),
                    Inspection.SampleSizeOfUnlimited(percent, 100 - (100 * doubt), found));
            }
        }
    }

    [Fact]
    public void Where_all_are_faulty_the_first_that_may_not_be_found_settles_it() => Assert.Equal(3, Inspection.SampleSizeOfUnlimited(100, 95, 2));

    [Fact]
    public void Numbers_outside_their_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("population", () => Inspection.SampleSize(Hypergeometric.LargestPopulation + 1, 1, 95));
        Assert.Throws<ArgumentOutOfRangeException>("population", () => Inspection.UpperBound(Hypergeometric.LargestPopulation + 1, 1, 0, 95));
        Assert.Throws<ArgumentOutOfRangeException>("found", () => Inspection.UpperBound(10, 5, 6, 95));
        Assert.Throws<ArgumentOutOfRangeException>("points", () => TheilSen.Slope([(double.NaN, 1), (1, 2), (2, 3)]));
        Assert.Throws<ArgumentOutOfRangeException>("points", () => TheilSen.Slope([(0, double.NaN), (1, 2), (2, 3)]));
        Assert.Throws<ArgumentOutOfRangeException>("points", () => TheilSen.Slope([(1, 2)]));
        Assert.Throws<ArgumentNullException>("chances", () => FalseDiscovery.Adjusted(null!));
        Assert.Throws<ArgumentNullException>("readings", () => LastDigits.Of(null!, 1));
        Assert.Throws<ArgumentNullException>("items", () => SeededDraw.Order("seed", null!));
    }

    /// <summary>Samples that show at most so many faulty ones.</summary>
    private static BigInteger Within(int population, int faulty, int drawn, int found) => Enumerable.Range(0, found + 1)
        .Where(k => k <= faulty && drawn - k >= 0 && drawn - k <= population - faulty)
        .Aggregate(BigInteger.Zero, (sum, k) => sum + (Choose(faulty, k) * Choose(population - faulty, drawn - k)));

    /// <summary>The same of a share in thousandths, in units of 1000 to the power of the number drawn.</summary>
    private static BigInteger Endless(decimal percent, int drawn, int found) => Enumerable.Range(0, Math.Min(found, drawn) + 1)
        .Aggregate(BigInteger.Zero, (sum, k) => sum + (Choose(drawn, k) * BigInteger.Pow((int)(percent * 10), k) * BigInteger.Pow((int)(1000 - (percent * 10)), drawn - k)));

    private static bool IsAbove(BigInteger part, BigInteger whole, decimal doubt) => part * BigInteger.Pow(10, 28) > new BigInteger(doubt * 1e14m * 1e14m) * whole;

    /// <summary>The fraction, where it ends within 24 digits.</summary>
    private static decimal? DecimalOf(BigInteger part, BigInteger whole)
    {
        var scaled = BigInteger.DivRem(part * BigInteger.Pow(10, 24), whole, out var rest);
        return rest.IsZero ? (decimal)scaled / 1e24m : null;
    }

    private static BigInteger Choose(int of, int some) => Enumerable.Range(0, some).Aggregate(BigInteger.One, (product, i) => product * (of - i) / (i + 1));
}
