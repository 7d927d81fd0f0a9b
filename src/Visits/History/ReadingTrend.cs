using Findings;
using Kernel;
using Visits.Facts;

namespace Visits.History;

/// <summary>How one measured quantity of an appliance has moved, over its visits that can be compared with the latest.</summary>
public sealed record ReadingTrend
{
    /// <summary>What was measured, by its name in the facts of a visit.</summary>
    public required string Quantity { get; init; }

    /// <summary>The same in words.</summary>
    public required string What { get; init; }

    /// <summary>Unit of its values (UCUM).</summary>
    public required string Unit { get; init; }

    /// <summary>How many visits can be compared.</summary>
    public required int Visits { get; init; }

    /// <summary>How many of them, up to the latest, were measured with one and the same instrument.</summary>
    public required int OfOneInstrument { get; init; }

    /// <summary>Day of the first of them.</summary>
    public required DateOnly FirstOn { get; init; }

    /// <summary>Its value.</summary>
    public required decimal First { get; init; }

    /// <summary>Day of the latest visit.</summary>
    public required DateOnly LastOn { get; init; }

    /// <summary>Its value.</summary>
    public required decimal Last { get; init; }

    /// <summary>Change in a year, by the slope of Theil and Sen; absent: too few visits (a trend takes four with one instrument).</summary>
    public decimal? SlopePerYear { get; init; }

    /// <summary>
    /// Probability (0..1) that a steady quantity looks at least as much like one that goes the wrong way: exact, by Mann and Kendall, or of
    /// two visits by the accuracies that their instruments state. Absent: too few visits.
    /// </summary>
    public decimal? Chance { get; init; }

    /// <summary>The trends of what is followed, by the same reckoning as the rules on drifts.</summary>
    /// <param name="visits">The visits to one appliance, the latest first.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="law">Names the limit on how far two loads may differ.</param>
    public static IReadOnlyList<ReadingTrend> Of(IReadOnlyList<PastVisit> visits, LimitBook limits, IVisitLaw law)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(visits);
        ArgumentNullException.ThrowIfNull(law);
        if (visits.Count == 0)
            return [];

        var tolerance = limits.Everywhere(law.DriftLoadDifference, visits[0].Date).Max!.Value;
        return [.. Drift.All.Select(drift => Series.Of(visits[0], visits.Skip(1), drift.Name, tolerance) is { } series ? Of(drift, series) : null).OfType<ReadingTrend>()];
    }

    private static ReadingTrend Of(Drift drift, Series series)
    {
        var (first, last) = (series.Points[0], series.Points[^1]);
        return new ReadingTrend
        {
            Quantity = drift.Name,
            What = drift.What,
            Unit = drift.Unit,
            Visits = series.Points.Count,
            OfOneInstrument = series.OfOneInstrument.Count,
            FirstOn = DateOnly.FromDateTime(first.At.DateTime),
            First = first.Value.Value,
            LastOn = DateOnly.FromDateTime(last.At.DateTime),
            Last = last.Value.Value,
            SlopePerYear = drift.SlopePerYearOf(series),
            Chance = drift.ProbabilityOf(series),
        };
    }
}
