using Kernel;
using Records;
using Visits.Computations;

namespace Visits.Figures;

/// <summary>The state of the heat exchanger by each reading whose load and return temperature are known, today and on the visit before.</summary>
internal static class ExchangerFigures
{
    public static void AddTo(Worksheet sheet)
    {
        var visit = sheet.Visit;
        foreach (var (subject, reading) in visit.Readings ?? [])
            Add(sheet, subject, reading, sheet.Read(visit.Record.Water?.ReturnTemperatureC));
        foreach (var (subject, reading) in Subjects.Of("/previousVisit/readings", visit.Record.PreviousVisit?.Readings) ?? [])
            Add(sheet, subject, reading, sheet.Read(visit.Record.PreviousVisit?.ReturnTemperatureC));
    }

    private static void Add(Worksheet sheet, string subject, CombustionReading reading, Given returnTemperature)
    {
        Given[] givens = [sheet.Read(reading.FlueTemperatureC, subject), returnTemperature, sheet.Read(reading.LoadPercent, subject).Exact];
        sheet.Add(WaterComputations.Approach, subject, givens);
        sheet.Add(WaterComputations.TransferUnits, subject, givens);
    }
}
