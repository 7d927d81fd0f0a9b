using Records;
using Visits;

namespace Rules.Tightness;

/// <summary>
/// The editions of IGEM/UP/1B by the days on which a test may follow them. Source: the standard's publisher, Communication 1903 of
/// March 2026: Edition 4 for all tests from 1 October 2026, either from its publication, announced on 25 March 2026, until then.
/// </summary>
internal static class TightnessEditions
{
    /// <summary>The third.</summary>
    public const string Third = "3";
    /// <summary>The fourth.</summary>
    public const string Fourth = "4";

    private static readonly DateOnly LastOfThird = new(2026, 9, 30);
    private static readonly DateOnly FirstOfFourth = new(2026, 3, 25);

    /// <summary>The day of a test.</summary>
    public static DateOnly DayOf(TightnessTest test, Visit visit) => test.TestedOn ?? visit.Date;

    /// <summary>Is it one of the two?</summary>
    public static bool IsKnown(string edition) => edition is Third or Fourth;

    /// <summary>May a test of <paramref name="day"/> follow it?</summary>
    public static bool IsInForce(string edition, DateOnly day) => edition switch
    {
        Third => day <= LastOfThird,
        Fourth => day >= FirstOfFourth,
        _ => false,
    };

    /// <summary>
    /// The edition that judges a test: the only one in force on its day, else the one that it followed; null where that is not known.
    /// </summary>
    public static string? Governing(string? followed, DateOnly day) => (IsInForce(Third, day), IsInForce(Fourth, day)) switch
    {
        (true, false) => Third,
        (false, true) => Fourth,
        _ => followed is Third or Fourth ? followed : null,
    };
}
