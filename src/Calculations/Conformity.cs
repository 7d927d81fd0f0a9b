namespace Calculations;

/// <summary>
/// Probability that the true value conforms to a limit, JCGM 106:2012 clause 7, in double. The true value is taken as normal about the
/// reading, with the reading's standard uncertainty and no prior knowledge.
/// </summary>
public static class Conformity
{
    /// <summary>Probability that the true value is at most the limit: Phi((limit - value) / u).</summary>
    /// <param name="measured">The reading; uncertainty above 0.</param>
    /// <param name="upperLimit">The limit, in the reading's unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the uncertainty is not above 0.</exception>
    public static double AtMost(Measured measured, double upperLimit) => Cumulative(Deviates(measured, upperLimit));

    /// <summary>Probability that the true value is at least the limit: 1 - Phi((limit - value) / u).</summary>
    /// <param name="measured">The reading; uncertainty above 0.</param>
    /// <param name="lowerLimit">The limit, in the reading's unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the uncertainty is not above 0.</exception>
    public static double AtLeast(Measured measured, double lowerLimit) => Cumulative(-Deviates(measured, lowerLimit));

    /// <summary>Probability that the true value lies between two limits.</summary>
    /// <param name="measured">The reading; uncertainty above 0.</param>
    /// <param name="lowerLimit">The lower limit, in the reading's unit, at most the upper.</param>
    /// <param name="upperLimit">The upper limit, in the reading's unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, the uncertainty is not above 0, or the limits are crossed.</exception>
    public static double Between(Measured measured, double lowerLimit, double upperLimit)
    {
        Guard.Within(lowerLimit, double.MinValue, upperLimit);
        return Math.Max(0, 1 - AtMost(measured, lowerLimit) - AtLeast(measured, upperLimit));
    }

    private static double Deviates(Measured measured, double limit) =>
        (Guard.Within(limit, double.MinValue, double.MaxValue) - Guard.Within(measured.Value, double.MinValue, double.MaxValue))
        / Guard.Above(measured.StandardUncertainty, 0, double.MaxValue);

    // Normal distribution function. Near the middle the series phi(z) (z + z^3/3 + z^5/15 + ...); in the tails, where that would cancel,
    // the continued fraction of Laplace for the tail, z + 1/(z + 2/(z + 3/...)). Both are in Abramowitz and Stegun, 26.2.11 and 26.2.14.
    private static double Cumulative(double z)
    {
        const double Crossover = 3;
        if (z > Crossover)
        {
            return 1 - Cumulative(-z);
        }

        var density = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
        if (z < -Crossover)
        {
            var fraction = -z;
            for (var k = 100; k >= 1; k--)
            {
                fraction = -z + k / fraction;
            }

            return density / fraction;
        }

        double term = z, sum = z;
        for (var n = 3; n < 120; n += 2)
        {
            term *= z * z / n;
            sum += term;
        }

        return 0.5 + density * sum;
    }
}
