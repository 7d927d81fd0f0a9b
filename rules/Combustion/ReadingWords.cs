using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>The trade's words for flue readings.</summary>
internal static class ReadingWords
{
    /// <summary>Stated as taken after the work at <paramref name="rate"/>.</summary>
    public static IEnumerable<Subject<CombustionReading>> StatedAt(this Visit visit, FiringRate rate) =>
        (visit.Readings ?? []).Where(reading => reading.Value.Stage == WorkStage.AfterWork && reading.Value.Rate == rate);

    /// <summary>Stated as taken after the work at the same rate and later than <paramref name="reading"/>.</summary>
    public static IEnumerable<CombustionReading> After(this Visit visit, CombustionReading reading) =>
        reading is { Rate: { } rate, TakenAt: { } time }
            ? visit.StatedAt(rate).Select(other => other.Value).Where(other => other.TakenAt is { } later && later.Value > time.Value)
            : [];
}
