using Calculations;
using Findings;
using Records;
using Records.Values;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

/// <summary>Plausibility of flue readings.</summary>
internal static class ReadingPlausibilityOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("co2-agrees-with-o2", Readings(Co2AgreesWithO2)),
        ("flue-above-return", Readings((c, reading) => !IsAfterWork(reading) ? null :
            reading.FlueTemperatureC - c.Record.Water?.ReturnTemperatureC is { } rise ? Pass(rise >= 0) : Outcome.Missing)),
        ("reading-within-visit", Readings(WithinVisit)),
        ("readings-differ", c => Each(Listed(c), Pointer, one => Differs(Listed(c)!, one), Listed(c)?.Any(IsAfterWork) == true ? Outcome.Pass : Outcome.NotApplicable)),
        ("repeated-readings-agree", Readings(Repeats)),
        ("stated-ratio-agrees", Readings(StatedRatio)),
    ];

    private const string Pointer = "/combustion/readings";

    private static IReadOnlyList<CombustionReading>? Listed(Case c) => c.Record.Combustion?.Readings;

    private static Func<Case, IEnumerable<Opinion>> Readings(Func<Case, CombustionReading, Outcome?> judge) =>
        c => Each(Listed(c), Pointer, reading => judge(c, reading));

    // CO2 = CO2max (20.95 - O2) / 20.95; more CO2 than the fuel can give is a slip of the pen.
    private static Outcome? Co2AgreesWithO2(Case c, CombustionReading reading)
    {
        var allowed = c.Limit("co2-from-o2-deviation")!.Max!.Value;
        if (c.Record.Appliance.Fuel is not { } fuel)
            return Outcome.Missing;
        var most = (fuel switch
        {
            Fuel.NaturalGas => GasFamily.NaturalGas,
            Fuel.Propane => GasFamily.Propane,
            _ => GasFamily.Butane,
        }).Co2MaxPercent();
        if (reading is not { Co2Percent: { } co2, O2Percent: { } o2 } || co2 > most + allowed)
            return Outcome.Missing;

        const decimal Air = OxygenInAir.PhysicalPercent;
        var ofO2 = most * (Air - o2) / Air;
        if (o2 <= Air && Math.Abs(co2 - ofO2) <= allowed)
            return Outcome.Pass;

        // Were the O2 right, the ratio could be too high and nobody see it, unless it is that high by the CO2 as well.
        var couldHide = IsAfterWork(reading) && ofO2 >= 0 && reading.CoPpm / 10_000 > CombustionOpinions.RatioLimitUnderCeiling(c) * ofO2 && reading.CoPpm / 10_000 <= 0.008m * co2;
        return couldHide ? Outcome.Missing : Outcome.Advisory;
    }

    private static Outcome? WithinVisit(Case c, CombustionReading reading)
    {
        if (reading.TakenAt is not { } taken || c.Record.StartedAt is not { } start)
            return Outcome.Missing;

        var end = c.Record.FinishedAt;
        DateTime DayOf(Timestamp moment) => moment.Value.ToOffset(end.Value.Offset).Date;
        if (DayOf(taken) < DayOf(start) || DayOf(taken) > DayOf(end))
            return Outcome.Missing;

        // What is to show the boiler after the work can be older neither than a week nor than the work; settling is a rough figure.
        var (atWork, settling) = reading.Stage == WorkStage.AfterWork
            ? (c.Record.HeatExchanger?.MinutesSpent ?? 0, c.Record.Combustion?.SettledMinutes ?? 0)
            : (0, 0);
        var gone = (decimal)(taken.Value - start.Value).Ticks / TimeSpan.TicksPerMinute;
        if (reading.Stage == WorkStage.AfterWork && (DayOf(end) - DayOf(taken)).Days > 7)
            return Outcome.Missing;
        if (atWork > gone && atWork > 0)
            return Outcome.Missing;
        return Pass(gone >= 0 && gone >= atWork + settling && taken.Value <= end.Value);
    }

    // A reading before the work explains and is not judged; one that does not say when is.
    private static bool IsAfterWork(CombustionReading reading) => reading.Stage != WorkStage.BeforeWork;

    // One at minimum must not be one at maximum written twice; what has no rate may be either.
    private static Outcome? Differs(IReadOnlyList<CombustionReading> readings, CombustionReading one)
    {
        if (!IsAfterWork(one) || one.Rate == FiringRate.Maximum)
            return null;
        if (one.Rate is null)
            return Outcome.Missing;
        if (Lacks(one.CoPpm, one.Co2Percent))
            return Outcome.Missing;

        return Pass(!readings.Any(other => IsAfterWork(other) && other.Rate == FiringRate.Maximum && other.CoPpm == one.CoPpm && other.Co2Percent == one.Co2Percent));
    }

    // After the work, against the largest at the same rate; where that is nothing there is no share of it.
    private static Outcome? Repeats(Case c, CombustionReading one)
    {
        if (!IsAfterWork(one))
            return null;
        if (Lacks(one.Rate, one.Co2Percent))
            return Outcome.Missing;

        var largest = Listed(c)!.Where(other => IsAfterWork(other) && other.Rate == one.Rate).Max(other => other.Co2Percent);
        return largest > 0 ? Within(c.Limit("repeated-reading-deviation"), (largest - one.Co2Percent) / largest * 100) : Outcome.Missing;
    }

    // Written down worse than the readings give: one of the readings is wrong; better: only the ratio is.
    private static Outcome? StatedRatio(Case c, CombustionReading reading)
    {
        if (reading.StatedRatio is not { } stated)
            return Outcome.NotApplicable;
        if (reading.CoPpm is not { } co || reading.Co2Percent is not { } co2 || co2 == 0)
            return Outcome.Missing;

        var (apart, allowed) = (stated - co / (co2 * 10_000), c.Limit("stated-ratio-deviation")!.Max!.Value);
        return apart > allowed ? Outcome.Missing : Pass(apart >= -allowed);
    }
}
