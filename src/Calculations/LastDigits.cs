namespace Calculations;

/// <summary>
/// Whether the last digits of readings are as even as an instrument's are: a chi-square test over the digits that its display can show.
/// People who invent numbers favour some digits (Mosimann, Wiseman and Edelman, Data fabrication: can people generate random digits?,
/// Accountability in Research 4, 1995; from memory). The digits of honest readings are even only where the readings spread over several
/// decades of the last digit and stay clear of zero; elsewhere the test is refused.
/// </summary>
public static class LastDigits
{
    /// <summary>Fewest readings that are tested.</summary>
    public const int FewestReadings = 50;

    /// <summary>Steps of one decade of the last digit.</summary>
    private const int Decade = 10;

    private static readonly decimal[] Steps = [.. Enumerable.Range(-4, 8).Reverse().SelectMany(power => new[] { 5m, 2m, 1m }.Select(step => step * Power(power)))];

    /// <summary>The coarsest step, 1, 2 or 5 of some decimal place from 0.0001 to 1000, of which all readings are multiples; null where none is.</summary>
    /// <param name="readings">Readings of one instrument, of whoever took them.</param>
    public static decimal? StepOf(IReadOnlyCollection<decimal> readings) => Steps.Cast<decimal?>().FirstOrDefault(step => readings.All(reading => decimal.Remainder(reading, step!.Value) == 0));

    /// <summary>Tests the last digits.</summary>
    /// <param name="readings">The readings of one person with one instrument.</param>
    /// <param name="step">The display's step: 1, 2 or 5 of some decimal place.</param>
    public static LastDigitTest Of(IReadOnlyList<decimal> readings, decimal step)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count < FewestReadings)
            return new LastDigitTest(LastDigitRefusal.TooFew);
        if (!Steps.Contains(step) || readings.Any(reading => decimal.Remainder(reading, step) != 0))
            return new LastDigitTest(LastDigitRefusal.OffDisplay);

        var unit = UnitOf(step);
        var sorted = readings.Select(Math.Abs).Order().ToList();
        if (sorted[sorted.Count * 3 / 4] - sorted[sorted.Count / 4] < Decade * unit)
            return new LastDigitTest(LastDigitRefusal.TooNarrow);
        if (sorted[sorted.Count / 20] < Decade * unit)
            return new LastDigitTest(LastDigitRefusal.TooNearZero);

        var digits = (int)(Decade * unit / step);
        var counts = new int[digits];
        foreach (var reading in sorted)
            counts[(int)(decimal.Remainder(reading, Decade * unit) / step)]++;
        var expected = (double)readings.Count / digits;
        var statistic = counts.Sum(count => (count - expected) * (count - expected) / expected);
        return new LastDigitTest(null) { Counts = counts, Statistic = statistic, Chance = ChanceTails.ChiSquareAtLeast(statistic, digits - 1) };
    }

    /// <summary>The decimal place of a step.</summary>
    private static decimal UnitOf(decimal step) => Enumerable.Range(-4, 8).Select(Power).Last(power => power <= step);

    private static decimal Power(int power)
    {
        var value = 1m;
        for (var i = 0; i < Math.Abs(power); i++)
            value *= 10;
        return power < 0 ? 1 / value : value;
    }
}

/// <summary>What the test of last digits gave.</summary>
/// <param name="Refusal">Why there is no result; null where there is one.</param>
public sealed record LastDigitTest(LastDigitRefusal? Refusal)
{
    /// <summary>How often each digit that the display can show stands last.</summary>
    public IReadOnlyList<int> Counts { get; init; } = [];

    /// <summary>The chi-square value; degrees of freedom: one less than there are digits.</summary>
    public double Statistic { get; init; }

    /// <summary>Chance of at least this value where all digits are equally likely.</summary>
    public double Chance { get; init; } = 1;
}

/// <summary>Why last digits say nothing.</summary>
public enum LastDigitRefusal
{
    /// <summary>Fewer readings than <see cref="LastDigits.FewestReadings"/>.</summary>
    TooFew,

    /// <summary>A reading that the display cannot show.</summary>
    OffDisplay,

    /// <summary>The middle half of the readings spans less than a decade of the last digit.</summary>
    TooNarrow,

    /// <summary>One in twenty readings lies within a decade of zero, where low digits are more frequent by nature.</summary>
    TooNearZero,
}
