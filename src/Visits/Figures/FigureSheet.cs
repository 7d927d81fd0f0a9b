using Findings;

namespace Visits.Figures;

/// <summary>Every number that the service works out from a record, with its working. Read it from <see cref="Visit.Figures"/>.</summary>
internal static class FigureSheet
{
    /// <summary>The figures of <paramref name="visit"/>; one whose inputs are absent or outside the range of its formula is left out.</summary>
    public static IReadOnlyList<Figure> Of(Visit visit)
    {
        var sheet = new Worksheet(visit);
        var heatInput = GasRateFigures.AddTo(sheet);
        ReadingFigures.AddTo(sheet, heatInput);
        TightnessFigures.AddTo(sheet);
        WaterFigures.AddTo(sheet);
        ExchangerFigures.AddTo(sheet);
        VentilationFigures.AddTo(sheet);
        DateFigures.AddTo(sheet);
        HistoryFigures.AddTo(sheet);
        return sheet.Figures;
    }
}
