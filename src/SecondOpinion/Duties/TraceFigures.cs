using Records;

namespace SecondOpinion.Duties;

/// <summary>Instrument, calibration, time and place of each reading; must only where the reading is the one evidence of a must.</summary>
internal static class TraceFigures
{
    private const DutyKind Kind = DutyKind.TraceFigures;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || visit.Record.Combustion?.Readings is not { Count: > 0 } readings)
            yield break;
        foreach (var (place, reading) in readings.Index())
        {
            var at = $"/combustion/readings/{place}";
            yield return visit.Should(Kind, $"{at}/takenAt", visit.Recorded($"{at}/takenAt"), at);
            if (reading.Rate is null || reading.Stage is null)
                yield return visit.Must(Kind, reading.Rate is null ? $"{at}/rate" : $"{at}/stage", null, at);
        }

        yield return visit.Should(Kind, "/instruments", visit.Record.Instruments?.Any(one => one.Kind == InstrumentKind.FlueGasAnalyser) == true ? true : null, "/combustion/readings");
    }
}
