namespace Calculations;

/// <summary>
/// Two readings of one quantity, told apart by their uncertainties: the z test of a difference, in double. Both are taken as normal about
/// their true values and independent of each other. Source: JCGM 100:2008 (GUM), 5.1.2, for the uncertainty of a difference.
/// </summary>
public static class TwoReadings
{
    /// <summary>The difference in units of its standard uncertainty: (later - earlier) / sqrt(u1^2 + u2^2).</summary>
    /// <param name="earlier">The earlier reading; uncertainty above 0.</param>
    /// <param name="later">The later reading, in the same unit; uncertainty above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or an uncertainty is not above 0.</exception>
    public static double Z(Measured earlier, Measured later) =>
        (Guard.Within(later.Value, double.MinValue, double.MaxValue) - Guard.Within(earlier.Value, double.MinValue, double.MaxValue))
        / double.Hypot(Guard.Above(earlier.StandardUncertainty, 0, double.MaxValue), Guard.Above(later.StandardUncertainty, 0, double.MaxValue));

    /// <summary>Probability that two readings of one unchanged value differ upwards by at least as much: p of the one-sided test for a rise, 0 to 1. For a fall, swap them.</summary>
    /// <param name="earlier">The earlier reading; uncertainty above 0.</param>
    /// <param name="later">The later reading, in the same unit; uncertainty above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or an uncertainty is not above 0.</exception>
    public static double ProbabilityOfRise(Measured earlier, Measured later) => Conformity.AtMost(new Measured(Z(earlier, later), 1), 0);
}
