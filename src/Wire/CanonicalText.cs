using System.Globalization;
using System.Text;

namespace Wire;

/// <summary>The one way in which a number and a text are written where they are hashed, so that anybody can work the hash out.</summary>
/// <remarks>
/// A number stands in plain notation: no exponent, no leading plus, no zeros after its last digit behind the point, no bare point, one
/// zero before the point where it is below one; zero is <c>0</c>, never <c>-0</c>. Of a text only the quotation mark, the backslash and
/// U+0000 to U+001F are escaped.
/// </remarks>
public static class CanonicalText
{
    /// <summary>Most bytes that a number takes.</summary>
    public const int LongestNumber = 32;

    /// <summary>Writes a number; <paramref name="utf8"/> has room for <see cref="LongestNumber"/> bytes.</summary>
    /// <returns>How many bytes it took.</returns>
    public static int Write(decimal number, Span<byte> utf8)
    {
        // A decimal is never written with an exponent; what is to go are the zeros that it keeps.
        number.TryFormat(utf8, out var length, default, CultureInfo.InvariantCulture);
        if (utf8[..length].Contains((byte)'.'))
            length = utf8[..length].TrimEnd((byte)'0').TrimEnd((byte)'.').Length;
        if (number != 0)
            return length;

        utf8[0] = (byte)'0';
        return 1;
    }

    /// <summary>A text in quotation marks, with what is to be escaped in it escaped.</summary>
    public static string Quote(string text) => $"\"{Escape(text)}\"";

    /// <summary>A text with what is to be escaped in it escaped.</summary>
    public static string Escape(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var escaped = new StringBuilder();
        foreach (var c in text)
        {
            _ = c switch
            {
                '"' or '\\' => escaped.Append('\\').Append(c),
                < ' ' => escaped.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }
}
