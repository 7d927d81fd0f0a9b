using Findings;
using Visits.Facts;
using Visits.History;

namespace Visits.Figures;

/// <summary>What earlier visits and this one show together: only where there are earlier visits.</summary>
internal static class HistoryFigures
{
    private const string Inputs = "this visit's value, and those of the earlier visits in context";

    public static void AddTo(Worksheet sheet)
    {
        if (sheet.Visit.Earlier.Count == 0)
            return;

        foreach (var drift in Drift.All)
        {
            if (drift.SeriesOf(sheet.Visit) is { } series && drift.ProbabilityOf(series) is { } probability)
                Add(sheet, drift, series, probability);
        }
    }

    private static void Add(Worksheet sheet, Drift drift, Series series, decimal probability)
    {
        sheet.Add(new Figure
        {
            Name = $"{drift.Name}DriftProbability",
            Subject = drift.Subject,
            Value = probability,
            Unit = "1",
            Formula = series.IsTrend
                ? $"exact one-sided Mann-Kendall test over {series.OfOneInstrument.Count} visits, {Inputs}{Doubled(drift)}"
                : $"one-sided z test of two visits by their standard uncertainties, {Inputs}{Doubled(drift)}",
            Inputs = [],
            Source = series.IsTrend ? "Mann 1945; Kendall, Rank Correlation Methods" : "JCGM 100:2008",
        });
        if (drift.SlopePerYearOf(series) is { } slope)
        {
            sheet.Add(new Figure
            {
                Name = $"{drift.Name}PerYear",
                Subject = drift.Subject,
                Value = slope,
                Unit = $"{drift.Unit}/a",
                Formula = $"median of the slopes between all pairs of {series.OfOneInstrument.Count} visits, {Inputs}",
                Inputs = [],
                Source = "Theil 1950; Sen 1968",
            });
        }
    }

    private static string Doubled(Drift drift) => drift.Direction == DriftDirection.Either ? ", times two, since either way counts" : "";
}
