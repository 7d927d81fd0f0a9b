using System.Buffers.Text;

namespace Records.Values;

/// <summary>
/// Reads a JSON number into a decimal that equals it, or not at all: the framework rounds in silence (1e-40 becomes 0). Zeros
/// written after the point are kept where they fit, for they say how finely was read.
/// </summary>
public static class ExactDecimal
{
    private const int MostDigits = 29;
    private const int MostScale = 28;
    private static readonly UInt128 Largest = (UInt128.One << 96) - 1;
    private static readonly UInt128[] PowersOfTen =
        [.. Enumerable.Range(0, MostDigits + 1).Select(n => Enumerable.Repeat((UInt128)10, n).Aggregate(UInt128.One, (a, b) => a * b))];

    /// <param name="json">A number as the JSON grammar has it.</param>
    /// <param name="value">The decimal equal to it.</param>
    /// <returns>False when no decimal equals it.</returns>
    public static bool TryParse(ReadOnlySpan<byte> json, out decimal value)
    {
        value = default;
        var negative = json[0] == '-';
        UInt128 coefficient = 0;
        int digits = 0, zeros = 0, fraction = 0;
        var inFraction = false;
        var i = negative ? 1 : 0;
        for (; i < json.Length && json[i] is not ((byte)'e' or (byte)'E'); i++)
        {
            if (json[i] == '.')
            {
                inFraction = true;
                continue;
            }

            fraction += inFraction ? 1 : 0;
            if (json[i] == '0')
            {
                zeros++;
                continue;
            }

            var appended = digits == 0 ? 1 : zeros + 1;
            digits += appended;
            if (digits > MostDigits)
            {
                return false;
            }

            coefficient = (coefficient * PowersOfTen[appended]) + (uint)(json[i] - '0');
            zeros = 0;
        }

        var exponent = 0;
        var exponentFits = i == json.Length || Utf8Parser.TryParse(json[(i + 1)..], out exponent, out _);
        if (digits == 0)
        {
            value = new decimal(0, 0, 0, isNegative: false, (byte)Math.Min(fraction, MostScale));
            return true;
        }

        var power = (long)exponent - fraction + zeros;
        if (!exponentFits || power < -MostScale || digits + power > MostDigits)
        {
            return false;
        }

        coefficient *= PowersOfTen[Math.Max(power, 0)];
        if (coefficient > Largest)
        {
            return false;
        }

        var scale = (int)Math.Max(-power, 0);
        for (; scale < Math.Min(fraction - (long)exponent, MostScale) && coefficient * 10 <= Largest; scale++)
        {
            coefficient *= 10;
        }

        value = new decimal((int)(uint)coefficient, (int)(uint)(coefficient >> 32), (int)(uint)(coefficient >> 64), negative, (byte)scale);
        return true;
    }
}
