using System.Globalization;

namespace Records.Values;

/// <summary>A day as it is written outside of a record, in the years of which a record may speak.</summary>
public static class CalendarDay
{
    /// <summary>The first of these years.</summary>
    public const int FirstYear = 1900;

    /// <summary>The last of them.</summary>
    public const int LastYear = 2200;

    /// <summary>What is expected, in words.</summary>
    public const string Expected = "a day of the calendar such as 2026-09-14, from 1900 to 2200";

    /// <summary>The day that <paramref name="text"/> writes as yyyy-MM-dd; false when it writes none, or one of other years.</summary>
    public static bool TryParse(string? text, out DateOnly day) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day) && day.Year is >= FirstYear and <= LastYear;
}
