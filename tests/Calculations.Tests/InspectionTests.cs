using System.Numerics;
using System.Security.Cryptography;
using System.Text;
using CsCheck;

namespace Calculations.Tests;

/// <summary>Samples for a second look: sizes, bounds and the draw.</summary>
public class InspectionTests
{
    [Fact]
    public void The_size_is_the_least_for_which_the_bound_after_the_visits_lies_below_what_is_tolerated() =>
        Gen.Int[2, 400].SelectMany(population => Gen.Select(Gen.Const(population), Gen.Int[1, population], Gen.Int[0, 2], Gen.Int[50, 99])).Sample((population, tolerable, allowed, confidence) =>
        {
            if (tolerable <= allowed)
                return;
            var size = Inspection.SampleSize(population, tolerable, confidence, allowed);
            Assert.True(Inspection.UpperBound(population, size, allowed, confidence) < tolerable);
            Assert.True(size == allowed + 1 || Inspection.UpperBound(population, size - 1, allowed, confidence) >= tolerable);
        });

    /// <summary>
    /// Of the two distributions the hypergeometric has the thinner lower tail up to (n - 1) p (Uhlmann 1966, from memory). Where more is allowed, as at
    /// a confidence below a half, a great population may need a little more than one without end.
    /// </summary>
    [Fact]
    public void A_great_population_needs_no_more_than_one_without_end() =>
        Gen.Select(Gen.Int[1, 1000], Gen.Int[50, 999], Gen.Int[0, 10]).Sample((tenths, confidenceTenths, allowed) =>
        {
            var (share, confidence) = (tenths / 10m, confidenceTenths / 10m);
            var unlimited = Inspection.SampleSizeOfUnlimited(share, confidence, allowed);
            var limited = Inspection.SampleSize(1_000_000, Inspection.CountOfShare(1_000_000, share), confidence, allowed);
            var isInLowerTail = allowed <= (unlimited - 1) * share / 100;
            Assert.InRange(limited, unlimited * 0.98 - 1, isInLowerTail ? unlimited : unlimited * 1.02 + 1);
        }, iter: 300);

    /// <summary>Of sampling theory: the bound covers the truth with at least the stated confidence, whatever the truth is.</summary>
    [Theory]
    [InlineData(60, 15, 90)]
    [InlineData(200, 32, 95)]
    public void Over_all_samples_the_upper_bound_covers_the_truth_at_least_as_often_as_stated(int population, int visited, int confidence)
    {
        var bounds = Enumerable.Range(0, visited + 1).Select(found => Inspection.UpperBound(population, visited, found, confidence)).ToArray();
        for (var truth = 0; truth <= population; truth++)
        {
            var missed = Enumerable.Range(0, visited + 1).Where(found => bounds[found] < truth).Sum(found => Chance(population, truth, visited, found));
            Assert.True(missed <= 1 - confidence / 100.0 + 1e-12, $"{truth}: {missed}");
        }
    }

    [Fact]
    public void Ties_count_as_reached_for_every_population_of_which_one_is_left_out()
    {
        // One faulty of N is missed by a sample of N - 1 with a chance of exactly 1/N.
        foreach (var population in new[] { 10, 25, 50, 100, 1000, 100_000, 1_000_000 })
            Assert.Equal(population - 1, Inspection.SampleSize(population, 1, 100 - 100m / population));
    }

    [Fact]
    public void The_largest_allowed_questions_are_answered_in_reasonable_time()
    {
        Assert.InRange(Inspection.UpperBound(1_000_000, 10_000, 5_000, 95), 500_000, 510_000);
        Assert.InRange(Inspection.SampleSize(1_000_000, 1000, 99.9999m, 10), 20_000, 60_000);
        Assert.InRange(Inspection.SampleSizeOfUnlimited(0.1m, 99.9999m, 10), 20_000, 60_000);
    }

    [Fact]
    public void The_draw_is_that_of_the_standard_whatever_the_order_of_the_list()
    {
        // Order by HMAC-SHA-256 as openssl gives it: printf %s ITEM | openssl dgst -sha256 -hmac 2026-w40
        string[] drawn = ["HB-0009", "HB-0003", "HB-0010", "HB-0005", "HB-0002", "HB-0004", "HB-0008", "HB-0001", "HB-0006", "HB-0007"];

        Assert.Equal(drawn, SeededDraw.Order("2026-w40", drawn.Order(StringComparer.Ordinal)));
        Assert.Equal(drawn, SeededDraw.Order("2026-w40", drawn.OrderDescending(StringComparer.Ordinal)));
        Assert.Equal(drawn.Where(item => item != "HB-0005"), SeededDraw.Order("2026-w40", drawn.Where(item => item != "HB-0005")));
        Assert.NotEqual(drawn, SeededDraw.Order("2026-w41", drawn));
    }

    [Fact]
    public void A_promise_is_the_hash_of_the_seed() =>
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes("2026-w40"))), SeededDraw.Promise("2026-w40"));

    [Fact]
    public void Over_many_seeds_every_item_is_drawn_equally_often()
    {
        const int Items = 20, Drawn = 5, Seeds = 8000;
        string[] items = [.. Enumerable.Range(0, Items).Select(number => $"boiler {number}")];
        var counts = Enumerable.Range(0, Seeds).SelectMany(seed => SeededDraw.Order($"seed {seed}", items).Take(Drawn)).CountBy(item => item).ToDictionary();

        // Binomial(8000, 1/4): 2000 with a standard deviation of 38.7; five of those.
        Assert.All(items, item => Assert.InRange(counts[item], 1806, 2194));
    }

    private static double Chance(int population, int faulty, int drawn, int found) => found > faulty || drawn - found > population - faulty
        ? 0
        : Math.Exp(BigInteger.Log(Choose(faulty, found)) + BigInteger.Log(Choose(population - faulty, drawn - found)) - BigInteger.Log(Choose(population, drawn)));

    private static BigInteger Choose(int of, int some)
    {
        var product = BigInteger.One;
        for (var i = 0; i < some; i++)
            product = product * (of - i) / (i + 1);
        return product;
    }
}
