using Calculations;
using Findings;

namespace Visits.Facts;

/// <summary>
/// One quantity over the visits to an appliance that can be compared: this visit's value last. A day is one visit, of which the latest value
/// counts. Fitted parts and another fuel begin a series anew, and so, for a trend, does another instrument or one that is not recorded. Of
/// more visits than the test of a trend can take, the latest count.
/// </summary>
public sealed class Series
{
    private const double DaysAYear = 365.25;

    private Series(IReadOnlyList<(DateTimeOffset At, PastValue Value)> points, int ofOneInstrument)
    {
        Points = points;
        OfOneInstrument = [.. points.Skip(points.Count - ofOneInstrument)];
    }

    /// <summary>The visits with a comparable value, oldest first.</summary>
    public IReadOnlyList<(DateTimeOffset At, PastValue Value)> Points { get; }

    /// <summary>The last of them, this visit's among them, that were measured with one and the same instrument.</summary>
    public IReadOnlyList<(DateTimeOffset At, PastValue Value)> OfOneInstrument { get; }

    /// <summary>Are there enough of one instrument to speak of a trend?</summary>
    public bool IsTrend => OfOneInstrument.Count >= MannKendall.FewestValues;

    /// <summary>The visit before and this one, where both state their uncertainty; null where two values cannot be told apart.</summary>
    public (Measured Earlier, Measured Later)? Pair => Points is [.., var earlier, var later] && earlier.Value.Uncertainty > 0 && later.Value.Uncertainty > 0
        ? (Of(earlier.Value), Of(later.Value))
        : null;

    /// <summary>The values of a visit under a name, from this visit back; null where this visit has none.</summary>
    /// <param name="visit">This visit.</param>
    /// <param name="before">The visits before it, the latest first.</param>
    /// <param name="name">What was measured.</param>
    /// <param name="loadTolerance">How far two loads may differ, in points of the rated input.</param>
    public static Series? Of(PastVisit visit, IEnumerable<PastVisit> before, string name, decimal loadTolerance)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(before);
        if (visit.Value(name) is not { } today)
            return null;

        List<(DateTimeOffset, PastValue)> points = [(visit.FinishedAt, today)];
        var (ofOneInstrument, isOne, later, day) = (1, today.Instrument is not null, visit, visit.Date);
        foreach (var earlier in before)
        {
            if (points.Count == MannKendall.MostValues || later.PartsFitted == true || (earlier.Fuel is { } fuel && fuel != visit.Fuel))
                break;
            later = earlier;
            if (earlier.Date == day || earlier.Value(name) is not { } value || (today.LoadPercent is { } load && !(Math.Abs(load - (value.LoadPercent ?? -1000)) <= loadTolerance)))
                continue;

            day = earlier.Date;
            points.Insert(0, (earlier.FinishedAt, value));
            isOne &= value.Instrument == today.Instrument;
            ofOneInstrument += isOne ? 1 : 0;
        }

        return new Series(points, ofOneInstrument);
    }

    /// <summary>
    /// Probability that a quantity without a drift looks at least as much like one, one-sided: of a trend by Mann-Kendall, of two visits by
    /// their uncertainties. Null: there are too few comparable visits.
    /// </summary>
    /// <param name="falls">True for a drift downwards.</param>
    public double? ProbabilityOf(bool falls)
    {
        var sign = falls ? -1 : 1;
        if (IsTrend)
            return MannKendall.ProbabilityOfRise([.. OfOneInstrument.Select(point => sign * (double)point.Value.Value)]);

        return Pair is var (earlier, later)
            ? falls ? TwoReadings.ProbabilityOfRise(later, earlier) : TwoReadings.ProbabilityOfRise(earlier, later)
            : null;
    }

    /// <summary>Change in a year by the slope of Theil and Sen, in the unit of the value; null where there is no trend to speak of.</summary>
    public double? SlopePerYear => IsTrend
        ? TheilSen.Slope([.. OfOneInstrument.Select(point => ((point.At - OfOneInstrument[0].At).TotalDays / DaysAYear, (double)point.Value.Value))])
        : null;

    private static Measured Of(PastValue value) => new((double)value.Value, (double)value.Uncertainty!.Value);
}
