using System.Globalization;
using Findings;

namespace Kernel;

/// <summary>Numbers as sentences show them.</summary>
public static class Shown
{
    /// <summary>
    /// <paramref name="value"/> rounded to <paramref name="decimals"/> for display; with more of them while the rounded value would sit
    /// on the other side of <paramref name="limit"/>, so that no sentence says "0.0040 is above 0.0040".
    /// </summary>
    public static string Beside(this decimal value, Limit limit, int decimals)
    {
        ArgumentNullException.ThrowIfNull(limit);
        while (decimals < 28 && limit.Allows(decimal.Round(value, decimals, MidpointRounding.AwayFromZero)) != limit.Allows(value))
            decimals++;

        return decimal.Round(value, decimals, MidpointRounding.AwayFromZero).ToString($"F{decimals}", CultureInfo.InvariantCulture);
    }
}
