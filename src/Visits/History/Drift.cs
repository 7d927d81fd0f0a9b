using Visits.Computations;
using Visits.Facts;

namespace Visits.History;

/// <summary>Which way a quantity must not go.</summary>
public enum DriftDirection
{
    /// <summary>A rise is to be minded.</summary>
    Up,

    /// <summary>A fall is to be minded.</summary>
    Down,

    /// <summary>Either is.</summary>
    Either,
}

/// <summary>A quantity that is followed over the years.</summary>
/// <param name="Name">What is measured, by its name in the facts of a visit.</param>
/// <param name="What">The same in words.</param>
/// <param name="Subject">Where it stands in the record.</param>
/// <param name="Unit">Its unit (UCUM).</param>
/// <param name="Direction">Which way it must not go.</param>
public sealed record Drift(string Name, string What, string Subject, string Unit, DriftDirection Direction)
{
    /// <summary>CO/CO2 ratio at maximum rate.</summary>
    public static readonly Drift Ratio = new(MeasuredNames.CoCo2Ratio, "CO/CO2 ratio at maximum rate", "/combustion", "1", DriftDirection.Up);

    /// <summary>CO2 at maximum rate.</summary>
    public static readonly Drift Co2 = new(MeasuredNames.Co2Percent, "CO2 at maximum rate", "/combustion", "%", DriftDirection.Either);

    /// <summary>Flue gas temperature above the return at one load.</summary>
    public static readonly Drift FlueAboveReturn = new(MeasuredNames.FlueAboveReturnK, "flue gas temperature above the return", "/water/returnTemperatureC", "K", DriftDirection.Up);

    /// <summary>Precharge of the expansion vessel.</summary>
    public static readonly Drift Precharge = new(MeasuredNames.VesselPrechargeBar, "precharge of the expansion vessel", "/water/vesselPrechargeBar", "bar", DriftDirection.Down);

    /// <summary>Flame current.</summary>
    public static readonly Drift FlameCurrent = new(MeasuredNames.FlameCurrentMicroamps, "flame current", "/burner/flameCurrentMicroamps", "uA", DriftDirection.Down);

    /// <summary>Is it read from the flue gas?</summary>
    public bool IsOfFlueGas => this == Ratio || this == Co2 || this == FlueAboveReturn;

    /// <summary>Every quantity that is followed.</summary>
    public static IReadOnlyList<Drift> All { get; } = [Ratio, Co2, FlueAboveReturn, Precharge, FlameCurrent];

    /// <summary>Its comparable values; null where this visit has none, or no other is known.</summary>
    public Series? SeriesOf(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var tolerance = visit.Limits[visit.Law.DriftLoadDifference].Max!.Value;
        return visit.Earlier.Count > 0 ? Series.Of(visit.Facts, visit.Earlier, Name, tolerance) : null;
    }

    /// <summary>
    /// Probability that a quantity without a drift looks at least as much like one; where either way is minded, twice the smaller of the two.
    /// Null: too few visits.
    /// </summary>
    public decimal? ProbabilityOf(Series series)
    {
        ArgumentNullException.ThrowIfNull(series);
        double? probability = Direction switch
        {
            DriftDirection.Up => series.ProbabilityOf(falls: false),
            DriftDirection.Down => series.ProbabilityOf(falls: true),
            _ => series.ProbabilityOf(falls: false) is { } up && series.ProbabilityOf(falls: true) is { } down ? Math.Min(1, 2 * Math.Min(up, down)) : null,
        };
        return probability is { } known ? Digits.Keep(known, 4) : null;
    }

    /// <summary>Change in a year; null where there is no trend to speak of.</summary>
    public decimal? SlopePerYearOf(Series series)
    {
        ArgumentNullException.ThrowIfNull(series);
        return series.SlopePerYear is { } slope ? Digits.Keep(slope, 4) : null;
    }
}
