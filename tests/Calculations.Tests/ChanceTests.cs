using CsCheck;
using MathNet.Numerics.Distributions;

namespace Calculations.Tests;

/// <summary>Tails, many tests at once, and last digits.</summary>
public class ChanceTests
{
    [Fact]
    public void Tails_are_those_of_a_statistics_library() => Gen.Select(Gen.Int[1, 300], Gen.Double[0, 400], Gen.Int[1, 200]).Sample((degrees, value, count) =>
    {
        Assert.Equal(1 - ChiSquared.CDF(degrees, value), ChanceTails.ChiSquareAtLeast(value, degrees), 1e-10);
        if (value > 0)
            Assert.Equal(1 - Poisson.CDF(value, count - 1), ChanceTails.PoissonAtLeast(count, value), 1e-9);
    });

    [Fact]
    public void At_the_ends_tails_are_certain_or_nothing()
    {
        Assert.Equal(1, ChanceTails.PoissonAtLeast(0, 3));
        Assert.Equal(0, ChanceTails.PoissonAtLeast(2, 0));
        Assert.Equal(1, ChanceTails.ChiSquareAtLeast(0, 9));
        Assert.InRange(ChanceTails.ChiSquareAtLeast(1000, 9), double.Epsilon, 1e-200);
    }

    [Fact]
    public void Adjusted_chances_keep_their_order_and_reject_what_the_step_up_procedure_rejects() => Gen.Double[0, 1].Array[1, 40].Sample(chances =>
    {
        var adjusted = FalseDiscovery.Adjusted(chances);
        foreach (var rate in new[] { 0.05, 0.2, 0.5 })
        {
            // As the paper words it: the greatest rank k with p(k) <= k/m q, and all up to it.
            var sorted = chances.Order().ToArray();
            var greatest = Enumerable.Range(1, sorted.Length).LastOrDefault(rank => sorted[rank - 1] * ((double)sorted.Length / rank) <= rate);
            Assert.Equal(greatest, adjusted.Count(chance => chance <= rate));
        }

        Assert.All(chances.Zip(adjusted), pair => Assert.InRange(pair.Second, pair.First - 1e-12, 1));
    });

    [Theory]
    [InlineData(1, 10)]
    [InlineData(2, 5)]
    [InlineData(0.5, 2)]
    public void Even_readings_of_any_display_alarm_as_often_as_stated(double step, int digits)
    {
        const int Trials = 2000, Readings = 200;
        var random = new Random(20260914);
        var alarms = 0;
        for (var trial = 0; trial < Trials; trial++)
        {
            var test = LastDigits.Of([.. Enumerable.Range(0, Readings).Select(_ => (decimal)step * Math.Round((decimal)(Normal.Sample(random, 500, 80) / step)))], (decimal)step);
            Assert.Equal(digits, test.Counts.Count);
            alarms += test.Chance <= 0.05 ? 1 : 0;
        }

        // Binomial(2000, 0.05): 100 with a standard deviation of 9.7. With two digits the steps of the statistic are coarse: 200 readings alarm at 114 or more of one kind, 5.6 %.
        Assert.InRange(alarms, 70, digits == 2 ? 145 : 130);
    }

    [Fact]
    public void Favoured_digits_are_seen_and_what_says_nothing_is_refused()
    {
        decimal[] even = [.. Enumerable.Range(0, 100).Select(number => 100m + number)];
        Assert.Equal((null, 0.0, 1.0), (LastDigits.Of(even, 1).Refusal, LastDigits.Of(even, 1).Statistic, LastDigits.Of(even, 1).Chance));
        decimal[] favoured = [.. even.Select(reading => reading % 10 is 3 or 7 ? reading - reading % 10 : reading)];
        Assert.True(LastDigits.Of(favoured, 1).Chance < 1e-6);

        Assert.Equal(LastDigitRefusal.TooFew, LastDigits.Of(even[..49], 1).Refusal);
        Assert.Null(LastDigits.Of(even[..50], 1).Refusal);
        Assert.Equal(LastDigitRefusal.OffDisplay, LastDigits.Of([.. even, 100.5m], 1).Refusal);
        Assert.Equal(LastDigitRefusal.OffDisplay, LastDigits.Of(even, 3).Refusal);
        Assert.Equal(LastDigitRefusal.TooNarrow, LastDigits.Of([.. even.Select(reading => 100 + reading % 10)], 1).Refusal);
        Assert.Equal(LastDigitRefusal.TooNearZero, LastDigits.Of([.. even.Select(reading => reading - 100)], 1).Refusal);
    }

    [Theory]
    [InlineData(1, "12 15 17")]
    [InlineData(2, "12 16 18")]
    [InlineData(5, "15 20 35")]
    [InlineData(0.1, "9.1 9.0 8.7")]
    [InlineData(0.5, "9.5 9.0")]
    public void The_step_of_a_display_is_what_its_readings_have_in_common(double step, string readings) => Assert.Equal(
        (decimal)step, LastDigits.StepOf([.. readings.Split(' ').Select(reading => decimal.Parse(reading, System.Globalization.CultureInfo.InvariantCulture))]));

    [Fact]
    public void Readings_finer_than_any_display_have_no_step() => Assert.Null(LastDigits.StepOf([0.00001m]));
}
