using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>The flue analysis of the boiler as it is left, and what it lacks to stand in by regulation 26(9)(ca).</summary>
internal static class Analysis
{
    private const string Readings = "/combustion/readings";

    /// <summary>The burner is turned down by itself, so that it burns at two rates. Nobody says that it is not: it is.</summary>
    public static bool IsModulating(Visit visit) => !(visit.Record.Appliance.Condensing == false || visit.Record.Appliance.BurnerKind == BurnerKind.Atmospheric);

    public static bool HasGoodReading(Visit visit, FiringRate rate) => After(visit).Any(one => one.Reading.Rate == rate && IsWithin(visit, one.Reading));

    /// <summary>In limit at every rate at which it burns, by an analyser and at a time that stand up.</summary>
    public static bool IsGood(Visit visit) => Lacks(visit).Count == 0;

    /// <summary>Members that stand in the way of a good analysis; none: it is good.</summary>
    public static IReadOnlyList<string> Lacks(Visit visit)
    {
        var after = After(visit).ToList();
        if (!after.Exists(one => one.Reading.Rate == FiringRate.Maximum) || (IsModulating(visit) && !after.Exists(one => one.Reading.Rate == FiringRate.Minimum)))
            return [Readings];
        if (CombustionOpinions.ProductsAtInlet(visit.One))
            return ["/combustion/airInlet"];
        return
        [
            .. after.Where(one => !IsWithin(visit, one.Reading)).Select(one => $"{Readings}/{one.Index}/coPpm"),
            .. after.Where(one => one.Reading.TakenAt is null).Select(one => $"{Readings}/{one.Index}/takenAt"),
            .. Analyser(visit),
        ];
    }

    /// <summary>Nought at every rate: a cell that is dead shows the same.</summary>
    public static bool IsNought(Visit visit) => After(visit).Select(one => one.Reading.CoPpm).ToList() is { Count: > 0 } all && all.TrueForAll(co => co == 0);

    public static IEnumerable<(int Index, CombustionReading Reading)> After(Visit visit) =>
        (visit.Record.Combustion?.Readings ?? []).Index().Where(one => one.Item.Stage == WorkStage.AfterWork);

    private static bool IsWithin(Visit visit, CombustionReading reading) =>
        !IsNought(visit) && !CombustionOpinions.IsAir(reading) && CombustionOpinions.RatioOf(reading) <= CombustionOpinions.RatioLimitUnderCeiling(visit.One);

    private static IEnumerable<string> Analyser(Visit visit)
    {
        var analysers = (visit.Record.Instruments ?? []).Index().Where(one => one.Item.Kind == InstrumentKind.FlueGasAnalyser).ToList();
        var day = visit.One.AsOf;
        if (analysers.Count == 0)
            return ["/instruments"];
        return analysers.Exists(one => one.Item.CalibratedOn <= day && one.Item.CalibrationDueOn >= day) ? [] : [$"/instruments/{analysers[0].Index}/calibrationDueOn"];
    }
}
