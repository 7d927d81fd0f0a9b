using Findings;
using Kernel;

namespace Visits.Figures;

/// <summary>Every number that the service works out from a record, with its working. Read it from <see cref="Visit.Figures"/>.</summary>
internal static class FigureSheet
{
    private static readonly Action<Worksheet>[] Parts =
    [
        static sheet => ReadingFigures.AddTo(sheet, GasRateFigures.AddTo(sheet)),
        TightnessFigures.AddTo,
        WaterFigures.AddTo,
        ExchangerFigures.AddTo,
        VentilationFigures.AddTo,
        DateFigures.AddTo,
        HistoryFigures.AddTo,
    ];

    /// <summary>The figures of <paramref name="visit"/>; one whose inputs are absent or outside the range of its formula is left out.</summary>
    public static IReadOnlyList<Figure> Of(Visit visit)
    {
        var sheet = new Worksheet(visit);
        foreach (var addTo in Parts)
        {
            try
            {
                addTo(sheet);
            }
            catch (FuelNeededException)
            {
                // An input of the figure is absent like any other; what does not hang on the fuel stands in other parts.
            }
        }

        return sheet.Figures;
    }
}
