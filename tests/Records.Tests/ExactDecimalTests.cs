using System.Globalization;
using System.Numerics;
using System.Text;
using CsCheck;
using Records.Values;

namespace Records.Tests;

public class ExactDecimalTests
{
    [Theory]
    [InlineData("0", "0")]
    [InlineData("-0", "0")]
    [InlineData("-0.00", "0.00")]
    [InlineData("0e999999999999", "0")]
    [InlineData("4.50", "4.50")]
    [InlineData("4.5E1", "45")]
    [InlineData("4.50e0", "4.50")]
    [InlineData("450e-2", "4.50")]
    [InlineData("-12.25e+3", "-12250")]
    [InlineData("79228162514264337593543950335", "79228162514264337593543950335")]
    [InlineData("7922816251426433759354395033.5", "7922816251426433759354395033.5")]
    [InlineData("1e28", "10000000000000000000000000000")]
    [InlineData("1e-28", "0.0000000000000000000000000001")]
    [InlineData("0.10000000000000000000000000000000000000", "0.1000000000000000000000000000")]
    [InlineData("100000000000000000000000000000e-10", "10000000000000000000.000000000")]
    public void A_number_that_a_decimal_holds_is_read_with_its_zeros(string json, string expected)
    {
        Assert.True(ExactDecimal.TryParse(Encoding.UTF8.GetBytes(json), out var number));
        Assert.Equal(expected, number.ToString(CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("1e-40")]
    [InlineData("1e-29")]
    [InlineData("1e29")]
    [InlineData("1e400")]
    [InlineData("1e99999999999999999999")]
    [InlineData("1e-99999999999999999999")]
    [InlineData("79228162514264337593543950336")]
    [InlineData("-79228162514264337593543950336")]
    [InlineData("0.12345678901234567890123456789")]
    [InlineData("123456789012345678901234567890")]
    public void A_number_that_a_decimal_would_round_is_refused(string json) => Assert.False(ExactDecimal.TryParse(Encoding.UTF8.GetBytes(json), out _));

    /// <summary>Against System.Numerics.BigInteger: a number is read when and only when a 96-bit integer over a power of ten up to 28 equals it.</summary>
    [Fact]
    public void Reading_agrees_with_whole_number_arithmetic() => Gen.Select(
        Gen.Bool, Gen.Char['0', '9'].Array[1, 32], Gen.Char['0', '9'].Array[0, 32], Gen.Int[-40, 40]).Sample((negative, whole, fraction, exponent) =>
    {
        var digits = new string(whole).TrimStart('0');
        var json = (negative ? "-" : "") + (digits.Length == 0 ? "0" : digits) + (fraction.Length == 0 ? "" : "." + new string(fraction)) + "e" + exponent.ToString(CultureInfo.InvariantCulture);

        // The value is numerator / 10^60; a decimal holds it when some scale up to 28 leaves no remainder and 96 bits.
        var numerator = BigInteger.Parse("0" + digits + new string(fraction), CultureInfo.InvariantCulture) * BigInteger.Pow(10, 80 + exponent - fraction.Length);
        var isHeld = Enumerable.Range(0, 29).Any(scale =>
        {
            var (quotient, remainder) = BigInteger.DivRem(numerator * BigInteger.Pow(10, scale), BigInteger.Pow(10, 80));
            return remainder.IsZero && quotient < BigInteger.Pow(2, 96);
        });
        var isRead = ExactDecimal.TryParse(Encoding.UTF8.GetBytes(json), out var number);
        Assert.Equal(isHeld, isRead);
        if (isRead)
        {
            Assert.Equal(decimal.Parse(json, NumberStyles.Float, CultureInfo.InvariantCulture), number);
        }
    });
}
