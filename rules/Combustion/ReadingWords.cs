using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>The trade's words for flue readings.</summary>
internal static class ReadingWords
{
    /// <summary>Taken after the work at maximum rate; one that does not say at which rate is among them and is asked.</summary>
    public static IEnumerable<Subject<CombustionReading>>? ReadingsAtMaximum(this Visit visit) =>
        visit.ReadingsAfterWork?.Where(reading => reading.Value.Rate != FiringRate.Minimum);

    /// <summary>Stated as taken after the work at <paramref name="rate"/>.</summary>
    public static IEnumerable<Subject<CombustionReading>> StatedAt(this Visit visit, FiringRate rate) =>
        (visit.Readings ?? []).Where(reading => reading.Value.Stage == WorkStage.AfterWork && reading.Value.Rate == rate);
}
