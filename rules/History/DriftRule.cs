using Kernel;
using Rules.Combustion;
using Visits;
using Visits.Facts;
using Visits.History;

namespace Rules.History;

/// <summary>
/// A quantity has not drifted over the visits: four or more with one instrument by their order, two by the accuracies that their instruments
/// state. Fewer say nothing. A drift is advice: the value itself is judged by the rule on it.
/// </summary>
public abstract class DriftRule(Drift drift) : VisitRule
{
    protected sealed override string SubjectPointer => drift.Subject;

    protected sealed override Verdict Assess(Visit visit, Look look)
    {
        Note(visit, look);
        look.Note(visit.Record.PreviousVisit?.FinishedAt);
        if (drift.IsOfFlueGas && visit.ProductsReachTheAirInlet())
            return look.NotApplicable($"while products reach the air inlet the flue readings of this visit compare with nothing");
        if (drift.SeriesOf(visit) is not { Points.Count: > 1 } series)
            return look.NotApplicable($"too few visits: the {drift.What} was not measured on this visit and on an earlier one that could be compared");
        if (drift.ProbabilityOf(series) is not { } probability)
            return look.NotApplicable($"too few visits: a trend of the {drift.What} takes four with one instrument, and two cannot be told apart without stated accuracies");

        var limit = visit.Limits[LimitIds.DriftProbability];
        var isDrift = !limit.Allows(probability);
        var seen = series.IsTrend ? Trend(series, isDrift) : Pair(series, visit, isDrift);
        FormattableString said = $"{seen}; without a drift this much of one is seen with a probability of {probability.Beside(limit, 3)} (told below {limit.Min})";
        return isDrift
            ? look.Advisory(said).Against(limit).Advise("Look for the cause before the next visit is due: the value moves, whether or not it is within its limit today.")
            : look.Pass($"{said}").Against(limit);
    }

    /// <summary>Notes the members of the record that the value of this visit comes from.</summary>
    protected virtual void Note(Visit visit, Look look)
    {
    }

    private FormattableString Trend(Series series, bool isDrift)
    {
        var (visits, since) = (series.OfOneInstrument.Count, DateOnly.FromDateTime(series.OfOneInstrument[0].At.DateTime));
        return isDrift
            ? $"the {drift.What} has drifted by {drift.SlopePerYearOf(series)}{Unit} a year over {visits} visits since {since}"
            : (FormattableString)$"the {drift.What} shows no trend over {visits} visits since {since}";
    }

    private FormattableString Pair(Series series, Visit visit, bool isDrift)
    {
        var (before, now) = (series.Points[^2], series.Points[^1].Value);
        var earlier = visit.Earlier.First(candidate => candidate.FinishedAt == before.At);
        var asWell = (before.Value.Instrument == now.Instrument ? "" : ", by another instrument")
            + (earlier.ExchangerCleaned == visit.Facts.ExchangerCleaned ? "" : ", the heat exchanger cleaned on one of the two only");
        return isDrift
            ? $"the {drift.What} is {now.Value:0.#####}{Unit} and was {before.Value.Value:0.#####}{Unit} on {earlier.Date}{asWell}"
            : (FormattableString)$"too few visits for a trend; the {drift.What} is {now.Value:0.#####}{Unit}, not told apart from {before.Value.Value:0.#####}{Unit} on {earlier.Date}{asWell}";
    }

    private string Unit => drift.Unit == "1" ? "" : $" {drift.Unit}";
}
