using System.Globalization;

namespace RuleModel;

/// <summary>Numbers of scientific functions and decimals, each as the nearest of the other kind.</summary>
internal static class Digits
{
    private const int LongestNumber = 40;

    /// <summary><paramref name="value"/> with <paramref name="count"/> significant digits.</summary>
    public static decimal Keep(double value, int count)
    {
        Span<char> text = stackalloc char[LongestNumber];
        return value.TryFormat(text, out var length, $"G{count}", CultureInfo.InvariantCulture)
            ? decimal.Parse(text[..length], NumberStyles.Float, CultureInfo.InvariantCulture)
            : throw new ArgumentOutOfRangeException(nameof(value));
    }

    /// <summary>The double nearest to <paramref name="value"/>.</summary>
    public static double Nearest(decimal value)
    {
        Span<char> text = stackalloc char[LongestNumber];
        return value.TryFormat(text, out var length, default, CultureInfo.InvariantCulture)
            ? double.Parse(text[..length], NumberStyles.Float, CultureInfo.InvariantCulture)
            : throw new ArgumentOutOfRangeException(nameof(value));
    }
}
