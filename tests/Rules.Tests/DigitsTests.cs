using Visits.Computations;

namespace Rules.Tests;

/// <summary>The quick way between doubles and decimals against the way by their text (the framework's own conversions are the reference).</summary>
public sealed class DigitsTests
{
    private const int Numbers = 200_000;

    [Theory]
    [InlineData(4)]
    [InlineData(9)]
    public void Digits_are_kept_as_the_text_keeps_them(int count)
    {
        var random = new Random(count);
        for (var i = 0; i < Numbers; i++)
        {
            var value = Any(random, count);
            Assert.Equal(decimal.GetBits(Digits.KeepByText(value, count)), decimal.GetBits(Digits.Keep(value, count)));
        }
    }

    [Fact]
    public void The_nearest_double_is_the_one_that_the_text_gives()
    {
        var random = new Random(1);
        for (var i = 0; i < Numbers; i++)
        {
            var value = new decimal(random.Next(), i % 3 == 0 ? random.Next() : i % 3 == 1 ? random.Next(1 << 22) : 0, i % 7 == 0 ? random.Next() : 0, i % 2 == 0, (byte)random.Next(29));
            Assert.Equal(Digits.NearestByText(value), Digits.Nearest(value));
        }
    }

    [Fact]
    public void What_is_no_number_is_refused() => Assert.ThrowsAny<Exception>(() => Digits.Keep(double.NaN, 9));

    // Of every size, and every other one beside a half, a power of ten or a short number, where rounding decides.
    private static double Any(Random random, int count)
    {
        var size = Math.Pow(10, random.NextDouble() * 26 - 12) * (random.Next(2) == 0 ? -1 : 1);
        var digits = Math.Pow(10, random.Next(count + 1));
        return random.Next(8) switch
        {
            0 => (Math.Floor(size * digits) + 0.5) / digits,
            1 => Math.BitIncrement((random.Next(100_000) + 0.5) / digits),
            2 => Math.Pow(10, random.Next(-11, 14)) * (1 - random.Next(5) * 1e-10),
            3 => random.Next(100_000) / digits,
            _ => size,
        };
    }
}
