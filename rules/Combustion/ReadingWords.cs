using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

/// <summary>The trade's words for flue readings.</summary>
internal static class ReadingWords
{
    /// <summary>Stated as taken after the work at <paramref name="rate"/>.</summary>
    public static IEnumerable<Subject<CombustionReading>> StatedAt(this Visit visit, FiringRate rate) =>
        (visit.Readings ?? []).Where(reading => reading.Value.Stage == WorkStage.AfterWork && reading.Value.Rate == rate);

    /// <summary>The most that the CO/CO2 ratio after the work may be: the maker's own value where it counts, and never above the ceiling.</summary>
    public static Limit RatioLimit(this Visit visit) =>
        visit.MakersMax(static maker => maker.CoCo2RatioMax, LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling);

    /// <summary>The member by which a reading is one of air, as it is at the air inlet; null where it can be of flue gas.</summary>
    public static string? MemberThatShowsAir(this Visit visit, CombustionReading reading) =>
        reading.Co2Percent is { } co2 && !visit.Limits[LimitIds.FlueGasCo2].Allows(co2) ? "co2Percent"
        : reading.O2Percent is { } o2 && !visit.Limits[LimitIds.FlueGasO2].Allows(o2) ? "o2Percent"
        : null;

    /// <summary>Does the load that a reading states deny its maximum rate? It need not be recorded.</summary>
    public static bool DeniesItsRate(this Visit visit, CombustionReading reading) =>
        reading is { Rate: FiringRate.Maximum, LoadPercent: { } load } && !visit.Limits[LimitIds.MaximumRateLoad].Allows(load);

    /// <summary>
    /// Stated as taken after the work at the same rate and later than <paramref name="reading"/>. One of air, or whose load denies its rate,
    /// answers nothing.
    /// </summary>
    public static IEnumerable<CombustionReading> After(this Visit visit, CombustionReading reading) =>
        reading is { Rate: { } rate, TakenAt: { } time } ? visit.After(time.Value, rate) : [];

    /// <summary>As above, later than <paramref name="time"/>.</summary>
    public static IEnumerable<CombustionReading> After(this Visit visit, DateTimeOffset time, FiringRate rate) =>
        visit.StatedAt(rate).Select(other => other.Value)
            .Where(other => other.TakenAt is { } later && later.Value > time && visit.MemberThatShowsAir(other) is null && !visit.DeniesItsRate(other));

    /// <summary>Does a reading show good combustion: within the ratio's limit, and at maximum rate within every other?</summary>
    public static bool IsGood(this Visit visit, CombustionReading reading) =>
        reading is { CoPpm: { } co, Co2Percent: > 0 and { } co2 } && visit.RatioLimit().Allows(Calculations.FlueGas.Ratio(co, co2)) && visit.IsWithinMaximumLimits(reading);

    /// <summary>At maximum rate, or one that is not stated, within what is asked of carbon monoxide and carbon dioxide there; at minimum nothing more is asked.</summary>
    public static bool IsWithinMaximumLimits(this Visit visit, CombustionReading reading) => reading.Rate == FiringRate.Minimum
        || (reading.CoPpm is { } co && visit.CoLimit().Allows(co) && !(reading.Co2Percent < visit.Maker.Co2PercentMin) && !(reading.Co2Percent > visit.Maker.Co2PercentMax));

    /// <summary>The most carbon monoxide at maximum rate: the maker's, or the trade's default.</summary>
    public static Limit CoLimit(this Visit visit) => visit.MakersMax(static maker => maker.CoPpmMax, LimitIds.CoPpm);
}
