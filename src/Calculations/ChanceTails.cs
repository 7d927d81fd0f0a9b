namespace Calculations;

/// <summary>
/// Upper tails of the chi-square and the Poisson distribution, in double: both are regularized incomplete gamma functions, by the series
/// below their middle and the continued fraction above it (Abramowitz and Stegun, 6.5.29 and 6.5.31, 26.4.1, 26.4.21).
/// </summary>
public static class ChanceTails
{
    private const int MostTerms = 10_000;
    private const double Small = 1e-16;
    private const double Tiny = 1e-300;

    /// <summary>Chance of a chi-square value of at least <paramref name="value"/>.</summary>
    /// <param name="value">The value, from 0 to 1,000,000.</param>
    /// <param name="degreesOfFreedom">From 1 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static double ChiSquareAtLeast(double value, int degreesOfFreedom) =>
        UpperGamma(Guard.Within(degreesOfFreedom, 1, 1000) / 2.0, Guard.Within(value, 0, 1e6) / 2);

    /// <summary>Chance of at least <paramref name="count"/> events where <paramref name="mean"/> are expected.</summary>
    /// <param name="count">From 0 to 1000.</param>
    /// <param name="mean">From 0 to 1,000,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static double PoissonAtLeast(int count, double mean)
    {
        Guard.Within(count, 0, 1000);
        Guard.Within(mean, 0, 1e6);
        return count == 0 ? 1 : LowerGamma(count, mean);
    }

    private static double LowerGamma(double shape, double x) => x < shape + 1 ? Series(shape, x) : 1 - Fraction(shape, x);

    private static double UpperGamma(double shape, double x) => x < shape + 1 ? 1 - Series(shape, x) : Fraction(shape, x);

    private static double Series(double shape, double x)
    {
        var term = 1 / shape;
        var sum = term;
        for (var n = 1; n < MostTerms && term > sum * Small; n++)
        {
            term *= x / (shape + n);
            sum += term;
        }

        return x == 0 ? 0 : sum * Density(shape, x);
    }

    /// <summary>The continued fraction by the method of Lentz.</summary>
    private static double Fraction(double shape, double x)
    {
        var b = x + 1 - shape;
        var c = 1 / Tiny;
        var d = 1 / b;
        var value = d;
        for (var n = 1; n < MostTerms; n++)
        {
            var a = -n * (n - shape);
            b += 2;
            d = 1 / Away(a * d + b);
            c = Away(b + a / c);
            value *= c * d;
            if (Math.Abs(c * d - 1) < Small)
                break;
        }

        return value * Density(shape, x);
    }

    private static double Away(double divisor) => Math.Abs(divisor) < Tiny ? Tiny : divisor;

    private static double Density(double shape, double x) => Math.Exp(shape * Math.Log(x) - x - LogGamma(shape));

    /// <summary>Of whole and half numbers, by their recurrence from 1 and the square root of pi.</summary>
    private static double LogGamma(double shape)
    {
        var (sum, at) = (0.0, shape);
        while (at > 1)
        {
            at -= 1;
            sum += Math.Log(at);
        }

        return at == 1 ? sum : sum + Math.Log(Math.PI) / 2;
    }
}
