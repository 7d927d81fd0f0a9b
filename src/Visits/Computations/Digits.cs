using System.Globalization;

namespace Visits.Computations;

/// <summary>Numbers of scientific functions and decimals, each as the nearest of the other kind.</summary>
/// <remarks>Most numbers of a record are short and take a quick way; the others go by their text. The two give the same.</remarks>
internal static class Digits
{
    private const int LongestNumber = 40;

    // All integers up to here, and all of these powers, are doubles.
    private const ulong MostExact = 1UL << 53;
    private static readonly double[] PowersOfTen = [.. Enumerable.Range(0, 23).Select(power => double.Parse($"1e{power}", CultureInfo.InvariantCulture))];

    /// <summary><paramref name="value"/> with <paramref name="count"/> significant digits.</summary>
    public static decimal Keep(double value, int count) => TryKeep(value, count, out var kept) ? kept : KeepByText(value, count);

    /// <summary>The double nearest to <paramref name="value"/>.</summary>
    public static double Nearest(decimal value)
    {
        Span<int> parts = stackalloc int[4];
        decimal.GetBits(value, parts);
        var coefficient = ((ulong)(uint)parts[1] << 32) + (uint)parts[0];
        if (parts[2] != 0 || coefficient > MostExact || value.Scale >= PowersOfTen.Length)
            return NearestByText(value);

        // Both are exact, and a division rounds to the nearest.
        var size = coefficient / PowersOfTen[value.Scale];
        return value < 0 ? -size : size;
    }

    internal static decimal KeepByText(double value, int count)
    {
        Span<char> text = stackalloc char[LongestNumber];
        return value.TryFormat(text, out var length, $"G{count}", CultureInfo.InvariantCulture)
            ? decimal.Parse(text[..length], NumberStyles.Float, CultureInfo.InvariantCulture)
            : throw new ArgumentOutOfRangeException(nameof(value));
    }

    internal static double NearestByText(decimal value)
    {
        Span<char> text = stackalloc char[LongestNumber];
        return value.TryFormat(text, out var length, default, CultureInfo.InvariantCulture)
            ? double.Parse(text[..length], NumberStyles.Float, CultureInfo.InvariantCulture)
            : throw new ArgumentOutOfRangeException(nameof(value));
    }

    /// <summary>Scales the digits to keep into an integer, unless what is cut off is so near to a half that the scaling may have moved it across.</summary>
    private static bool TryKeep(double value, int count, out decimal kept)
    {
        const double Doubt = 1e-4;
        var size = Math.Abs(value);
        kept = 0;
        if (!(size >= 1e-9 && size < PowersOfTen[count]))
            return value == 0;

        // The logarithm may be one off beside a power of ten; then a digit too many or too few would be kept.
        var scale = count - 1 - (int)Math.Floor(Math.Log10(size));
        if (scale is < 0 or > 22)
            return false;
        var scaled = size * PowersOfTen[scale];
        var digits = Math.Round(scaled);
        if (Math.Abs(Math.Abs(scaled - digits) - 0.5) < Doubt || scaled < PowersOfTen[count - 1] || digits >= PowersOfTen[count])
            return false;

        var coefficient = (ulong)digits;
        for (; scale > 0 && coefficient % 10 == 0; scale--)
            coefficient /= 10;
        kept = new decimal((int)(uint)coefficient, (int)(uint)(coefficient >> 32), 0, value < 0, (byte)scale);
        return true;
    }
}
