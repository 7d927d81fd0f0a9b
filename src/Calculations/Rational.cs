using System.Numerics;

namespace Calculations;

/// <summary>A decimal as the fraction of two whole numbers that it is.</summary>
internal static class Rational
{
    public static (BigInteger Numerator, BigInteger Denominator) Of(decimal value) =>
        (new BigInteger(decimal.Truncate(value * Power(value.Scale))), new BigInteger(Power(value.Scale)));

    private static decimal Power(byte scale)
    {
        var power = 1m;
        for (var i = 0; i < scale; i++)
            power *= 10;
        return power;
    }
}
