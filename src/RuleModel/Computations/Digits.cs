using System.Globalization;

namespace RuleModel;

/// <summary>Numbers of scientific functions as decimals.</summary>
internal static class Digits
{
    /// <summary><paramref name="value"/> with <paramref name="count"/> significant digits.</summary>
    public static decimal Keep(double value, int count) =>
        decimal.Parse(value.ToString($"G{count}", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);
}
