namespace Calculations;

/// <summary>A measured value with its standard uncertainty, in one unit.</summary>
public sealed record Measured(double Value, double StandardUncertainty);

/// <summary>Measurement uncertainty, in double: first order, inputs independent, JCGM 100:2008 (GUM) equation 10.</summary>
public static class Uncertainty
{
    /// <summary>
    /// Standard uncertainty of an instrument reading, same unit: the larger of an absolute and a relative limit of error, and half the
    /// resolution, each as a rectangular distribution (limit / sqrt 3; JCGM 100 clause 4.3.7), added in quadrature.
    /// </summary>
    /// <param name="value">The reading.</param>
    /// <param name="absoluteLimit">Limit of error in the reading's unit, 0 or more.</param>
    /// <param name="relativeLimitPercent">Limit of error in per cent of the reading, 0 to 100.</param>
    /// <param name="resolution">Step of the display in the reading's unit, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    public static double OfReading(double value, double absoluteLimit, double relativeLimitPercent, double resolution)
    {
        var limit = Math.Max(
            Guard.Within(absoluteLimit, 0, double.MaxValue),
            Math.Abs(value) * Guard.Within(relativeLimitPercent, 0, 100) / 100);
        return double.Hypot(limit, Guard.Within(resolution, 0, double.MaxValue) / 2) / Math.Sqrt(3);
    }

    /// <summary>Combined standard uncertainty of a function: sqrt(sum (df/dx_i u_i)^2), slopes by central difference over u/100.</summary>
    /// <param name="model">The function; it is called with each input moved by a hundredth of its uncertainty and must accept that.</param>
    /// <param name="inputs">The inputs, independent of each other; uncertainties 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An uncertainty is negative or not a number.</exception>
    public static double Combined(Func<IReadOnlyList<double>, double> model, IReadOnlyList<Measured> inputs)
    {
        var values = inputs.Select(input => input.Value).ToArray();
        var variance = 0.0;
        for (var i = 0; i < inputs.Count; i++)
        {
            var step = Guard.Within(inputs[i].StandardUncertainty, 0, double.MaxValue, nameof(inputs)) / 100;
            values[i] = inputs[i].Value + step;
            var above = model(values);
            values[i] = inputs[i].Value - step;
            var contribution = (above - model(values)) / 2 * 100;
            values[i] = inputs[i].Value;
            variance += contribution * contribution;
        }

        return Math.Sqrt(variance);
    }

    /// <summary>
    /// Standard uncertainty of the CO/CO2 ratio, dimensionless, in closed form, so that it holds at CO = 0 as well:
    /// sqrt(u_CO^2 + (CO u_CO2 / CO2)^2) / (10 000 CO2).
    /// </summary>
    /// <param name="coPpm">CO, ppm; value 0 to 1 000 000.</param>
    /// <param name="co2Percent">CO2, volume per cent; value above 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double OfRatio(Measured coPpm, Measured co2Percent)
    {
        Guard.Within(coPpm.Value, 0, 1e6);
        Guard.Above(co2Percent.Value, 0, 100);
        var fromCo = Guard.Within(coPpm.StandardUncertainty, 0, double.MaxValue);
        var fromCo2 = coPpm.Value * Guard.Within(co2Percent.StandardUncertainty, 0, double.MaxValue) / co2Percent.Value;
        return double.Hypot(fromCo, fromCo2) / (10_000 * co2Percent.Value);
    }
}
