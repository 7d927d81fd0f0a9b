using Calculations;
using Findings;
using Kernel;

namespace Visits;

/// <summary>How sure a measured value is, and how sure a pass has to be.</summary>
/// <param name="StandardUncertainty">Standard uncertainty in the value's unit, above 0.</param>
/// <param name="Guard">Lowest probability of conformity of a plain pass.</param>
public sealed record Doubt(double StandardUncertainty, Limit Guard) : IDoubt
{
    /// <summary>Probability that the true value conforms to <paramref name="limit"/> (JCGM 106); null for a limit in words.</summary>
    public decimal? ConformityOf(Limit limit, decimal value)
    {
        ArgumentNullException.ThrowIfNull(limit);
        var measured = new Measured((double)value, StandardUncertainty);
        double? probability = (limit.Min, limit.Max) switch
        {
            ({ } min, { } max) when min > max => 0,
            ({ } min, { } max) => Conformity.Between(measured, (double)min, (double)max),
            ({ } min, null) => Conformity.AtLeast(measured, (double)min),
            (null, { } max) => Conformity.AtMost(measured, (double)max),
            _ => null,
        };
        return probability is { } known ? decimal.Round((decimal)known, 6) : null;
    }
}
