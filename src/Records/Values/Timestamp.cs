using System.Globalization;
using System.Text.Json.Serialization;

namespace Records.Values;

/// <summary>
/// A date-time with its offset (RFC 3339, section 5.6), kept as it was written: the date in the text decides whose law is in force,
/// and the text goes into the hash. A leap second and the offset <c>-00:00</c> (local time unknown, section 4.3) are refused, and so is a text over
/// 50 characters.
/// </summary>
/// <param name="Value">The instant and its offset, to 100 ns; further digits stay in the text.</param>
/// <param name="Text">The text as it was recorded.</param>
[JsonConverter(typeof(TimestampConverter))]
public readonly record struct Timestamp(DateTimeOffset Value, string Text)
{
    private const int LongestText = 50;

    /// <summary>The date as written, at its own offset.</summary>
    public DateOnly Date => DateOnly.FromDateTime(Value.DateTime);

    /// <summary>Reads a text such as <c>2026-09-14T10:25:00+01:00</c>.</summary>
    /// <exception cref="FormatException">The text is no date-time with an offset.</exception>
    public static Timestamp Parse(string text) => TryParse(text, out var timestamp)
        ? timestamp
        : throw new FormatException($"'{text}' is no RFC 3339 date-time with an offset.");

    /// <summary>Reads a text such as <c>2026-09-14T10:25:00+01:00</c>; false when it is none.</summary>
    public static bool TryParse(string text, out Timestamp timestamp)
    {
        timestamp = default;
        if (text.Length is < 20 or > LongestText || text.EndsWith("-00:00", StringComparison.Ordinal))
        {
            return false;
        }

        var zoneLength = text[^1] is 'Z' or 'z' ? 1 : 6;
        var clock = text.AsSpan(0, text.Length - zoneLength);
        if (clock.Length < 19 || !TryOffset(text.AsSpan(clock.Length), out var offset) || !TryFraction(clock[19..], out var ticks)
            || clock[10] is not ('T' or 't')
            || !DateOnly.TryParseExact(clock[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            || !TimeOnly.TryParseExact(clock[11..19], "HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return false;
        }

        var local = day.ToDateTime(time).AddTicks(ticks);
        if ((local - DateTime.MinValue) < offset || (DateTime.MaxValue - local) < -offset)
        {
            return false;
        }

        timestamp = new Timestamp(new DateTimeOffset(local, offset), text);
        return true;
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static bool TryOffset(ReadOnlySpan<char> zone, out TimeSpan offset)
    {
        offset = default;
        if (zone.Length == 1)
        {
            return true;
        }

        if (zone[0] is not ('+' or '-')
            || !TimeSpan.TryParseExact(zone[1..], @"hh\:mm", CultureInfo.InvariantCulture, TimeSpanStyles.None, out offset)
            || offset > TimeSpan.FromHours(14))
        {
            return false;
        }

        offset = zone[0] == '-' ? -offset : offset;
        return true;
    }

    private static bool TryFraction(ReadOnlySpan<char> fraction, out long ticks)
    {
        ticks = 0;
        if (fraction.IsEmpty)
        {
            return true;
        }

        if (fraction[0] != '.' || fraction.Length < 2 || fraction[1..].ContainsAnyExceptInRange('0', '9'))
        {
            return false;
        }

        var unit = TimeSpan.TicksPerSecond / 10;
        foreach (var digit in fraction[1..])
        {
            ticks += (digit - '0') * unit;
            unit /= 10;
        }

        return true;
    }
}
