using Findings;
using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>What the flue gas says of the burn.</summary>
internal static class CombustionOpinions
{
    private const string Readings = "/combustion/readings";
    private const string Combustion = "/combustion";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("air-inlet-check", one => [AirInlet(one)]),
        ("combustion-ratio", one => EachAfterWork(one, (reading, at) => Ratio(one, reading, at))),
        ("flue-co", one => EachAtMaximum(one, (reading, at) => FlueCo(one, reading, at))),
        ("flue-co2", one => EachAtMaximum(one, (reading, at) => FlueCo2(one, reading, at))),
        ("flue-reading-settled", one => [Settled(one)]),
        ("reading-order", one => [Order(one)]),
        ("readings-at-both-rates", one => [BothRates(one)]),
    ];

    /// <summary>Products reach the air inlet of a room-sealed boiler: no flue reading counts then.</summary>
    public static bool ProductsAtInlet(Case one) =>
        one.IsOpenFlued() != true && one.Record.Combustion?.AirInlet is { O2Percent: < 20.6m } or { Co2Percent: >= 0.2m };

    /// <summary>CO over CO2 of a reading; null where either is absent or there is no CO2.</summary>
    public static decimal? RatioOf(CombustionReading reading) =>
        reading is { CoPpm: { } co, Co2Percent: { } co2 } && co2 > 0 ? co / 10_000 / co2 : null;

    /// <summary>As much oxygen or as little carbon dioxide as the air inlet of a sound boiler shows: the probe was not in flue gas.</summary>
    public static bool IsAir(CombustionReading reading) => reading is { Co2Percent: < 0.2m } or { O2Percent: >= 20.6m };

    /// <summary>The maker's limit where it is not looser than the default, or names its source.</summary>
    public static decimal LimitOf(Case one, decimal? makers, decimal standard) =>
        makers is { } own && (own <= standard || one.Record.MakerLimits!.Source is not null) ? own : standard;

    public static decimal RatioLimit(Case one) => LimitOf(one, one.Record.MakerLimits?.CoCo2RatioMax, 0.004m);

    public static decimal RatioLimitUnderCeiling(Case one) => Math.Min(RatioLimit(one), 0.008m);

    private static Opinion AirInlet(Case one)
    {
        const string Inlet = "/combustion/airInlet";
        if (one.IsOpenFlued() is not { } isOpen)
            return Missing();
        if (isOpen)
            return NotApplicable();
        if (ProductsAtInlet(one))
            return one.AtRiskOrWorse(Inlet);
        return one.Record.Combustion?.AirInlet switch
        {
            // Nowhere is there so much oxygen; an analyser that far off can hide products.
            { O2Percent: > 21.2m } => Missing(Inlet),
            // Clean air less what BS EN 50379-2 lets an analyser err (0.3 % of oxygen, from memory) is still above the limit: no allowance on top.
            { O2Percent: not null, Co2Percent: not null } => Pass(Inlet),
            null when one.Record.Appliance.FlueType == FlueType.RoomSealedNatural => NotApplicable(),
            { O2Percent: null, Co2Percent: null, NotPracticableReason: not null } => Advisory(Inlet),
            _ => Missing(Inlet),
        };
    }

    private static IEnumerable<Opinion> EachAfterWork(Case one, Func<CombustionReading, string, Opinion> say)
    {
        if (one.Record.Combustion?.Readings is not { } readings)
            return [Missing(Readings)];
        var after = readings.Select((reading, index) => (reading, at: $"{Readings}/{index}")).Where(pair => pair.reading.Stage != WorkStage.BeforeWork).ToList();
        return after.Count == 0 ? [Missing()] : after.Select(pair => InFlueGas(pair.reading, say(pair.reading, pair.at)));
    }

    private static IEnumerable<Opinion> EachAtMaximum(Case one, Func<CombustionReading, string, Opinion> say)
    {
        if (one.Record.Combustion?.Readings is not { } readings)
            return [Missing(Readings)];
        var after = readings.Select((reading, index) => (reading, at: $"{Readings}/{index}"))
            .Where(pair => pair.reading.Stage != WorkStage.BeforeWork && pair.reading.Rate != FiringRate.Minimum)
            .ToList();
        return after.Count == 0 ? [Missing()] : after.Select(pair => pair.reading.Rate is null ? Missing(pair.at) : InFlueGas(pair.reading, OnlyAtLoad(pair.reading, say(pair.reading, pair.at))));
    }

    /// <summary>At less than half load no rate is the maximum, and only a danger shows.</summary>
    private static Opinion OnlyAtLoad(CombustionReading reading, Opinion opinion) => reading.LoadPercent < 50 ? OrMissing(opinion) : opinion;

    private static Opinion InFlueGas(CombustionReading reading, Opinion opinion) => IsAir(reading) ? OrMissing(opinion) : opinion;

    private static Opinion OrMissing(Opinion opinion) => opinion.Outcome == Outcome.Unsafe ? opinion : Missing(opinion.Subject);

    private static Opinion Ratio(Case one, CombustionReading reading, string at)
    {
        if (RatioOf(reading) is not { } ratio || reading.Stage is null || ProductsAtInlet(one))
            return Missing(at);
        var limit = RatioLimit(one);
        if (ratio > 0.008m)
        {
            // Put right, and the boiler burns as it should in a later reading at that rate.
            return one.IsWrittenAsRectified(at, Findings.Topics.Combustion) && IsShownRight(one, reading)
                ? Advisory(at)
                : one.AtRiskOrWorse(at);
        }

        return Over(one, ratio, limit, 0.004m, IsLaterWithin(one, reading, other => RatioOf(other) <= limit), at)
            .IfSure(RatioUncertainty(one, reading), ratio, null, limit);
    }

    /// <summary>Did a later reading at that rate show that the boiler burns as it should?</summary>
    public static bool IsShownRight(Case one, CombustionReading reading) =>
        IsLaterWithin(one, reading, other => BurnsRight(one, other));

    /// <summary>By its own values, wherever the products go.</summary>
    public static bool BurnsRight(Case one, CombustionReading reading) =>
        RatioOf(reading) <= RatioLimit(one) && (reading.Rate == FiringRate.Minimum || BurnsRightAtMaximum(one, reading));

    private static bool BurnsRightAtMaximum(Case one, CombustionReading reading) => reading.CoPpm <= LimitOf(one, one.Record.MakerLimits?.CoPpmMax, 350)
        && (one.Record.MakerLimits?.Co2PercentMin is not { } least || reading.Co2Percent >= least)
        && (one.Record.MakerLimits?.Co2PercentMax is not { } most || reading.Co2Percent <= most);

    public static double? RatioUncertainty(Case one, CombustionReading reading)
    {
        var (co, co2) = ((double)reading.CoPpm!.Value, (double)reading.Co2Percent!.Value);
        var ofCo = Sureness.OfAnalyser(one, "coPpm", reading.CoPpm, reading.Instrument);
        var ofCo2 = Sureness.OfAnalyser(one, "co2Percent", reading.Co2Percent, reading.Instrument);
        return double.Hypot(ofCo / co2 ?? double.NaN, ofCo2 * co / co2 / co2 ?? double.NaN) / 10_000 is var u && double.IsNaN(u) ? null : u;
    }

    private static Opinion FlueCo(Case one, CombustionReading reading, string at)
    {
        if (reading.CoPpm is not { } co || reading.Stage is null || ProductsAtInlet(one))
            return Missing(at);
        var limit = LimitOf(one, one.Record.MakerLimits?.CoPpmMax, 350);
        return Over(one, co, limit, 350, IsLaterWithin(one, reading, other => other.CoPpm <= limit), at)
            .IfSure(Sureness.OfAnalyser(one, "coPpm", co, reading.Instrument), co, null, limit);
    }

    /// <summary>Was the same rate read again later, after the work, and within the limit?</summary>
    private static bool IsLaterWithin(Case one, CombustionReading reading, Func<CombustionReading, bool> isWithin) =>
        one.Record.Combustion!.Readings!.Any(other => other.Stage == WorkStage.AfterWork && other.Rate is not null && other.Rate == reading.Rate
            && other.TakenAt?.Value > reading.TakenAt?.Value && isWithin(other) && !IsAir(other) && !(other.Rate == FiringRate.Maximum && other.LoadPercent < 50));

    /// <summary>Over the limit: at a commissioning the boiler must not stay in use; else advice, as is a maker's limit looser than the default.</summary>
    private static Opinion Over(Case one, decimal value, decimal limit, decimal standard, bool isMeasuredAgain, string at)
    {
        if (value <= limit)
            return value <= standard ? Pass(at) : Advisory(at);
        if (one.Record.JobType != JobType.Commissioning || one.Record.MakerLimits?.DecisionReference is not null || isMeasuredAgain)
            return Advisory(at);
        if (!one.IsLeftOff())
            return AtRisk(at);
        // At risk and off: nobody needs the maker's word before it is used again.
        return PlacedDefect.Of(one).Any(defect => defect is { IsDangerous: true, IsLeftOff: true } && defect.IsAbout(at, Findings.Topics.Combustion)) ? Advisory(at) : Missing(at);
    }

    /// <summary>
    /// The maker's band, if it is one: from nothing, or to more than the gas can give, is none. A condensing boiler burns with about as much
    /// air as the next one, so a band that reaches further has to have been read somewhere; of older ones only the source is wanted.
    /// </summary>
    private static Opinion FlueCo2(Case one, CombustionReading reading, string at)
    {
        var (least, most) = (one.Record.MakerLimits?.Co2PercentMin, one.Record.MakerLimits?.Co2PercentMax);
        if (reading.Co2Percent is not { } co2 || reading.Stage is null || ProductsAtInlet(one))
            return Missing(at);
        var isOlder = one.Record.Appliance.Condensing == false;
        if (least is null || most is null)
            return isOlder ? NotApplicable(at) : Missing(at);

        if (one.Record.Appliance.Fuel is not { } fuel)
            return Missing(at);
        (decimal all, (decimal Least, decimal Most) usually) = fuel switch
        {
            Fuel.NaturalGas => (11.7m, (8.5m, 10.5m)),
            Fuel.Propane => (13.72m, (9.5m, 11.5m)),
            _ => (14.02m, (9.5m, 11.5m)),
        };
        if (least == 0 || most > all)
            return Missing(at);
        if (co2 < least || co2 > most)
            return Advisory(at);
        var isFromSomewhere = one.Record.MakerLimits!.Source is not null;
        if (co2 < usually.Least || co2 > usually.Most)
        {
            if (isOlder != isFromSomewhere)
                return Advisory(at);
            if (!isOlder)
                return Missing(at);
        }

        return Pass(at).IfSure(Sureness.OfAnalyser(one, "co2Percent", co2, reading.Instrument), co2, least, most);
    }

    private static Opinion Settled(Case one) => one.Record.Combustion?.SettledMinutes switch
    {
        _ when ProductsAtInlet(one) => Missing(Combustion),
        null => Missing(Combustion),
        >= 5 => Pass(Combustion),
        _ => Advisory(Combustion),
    };

    private static Opinion Order(Case one)
    {
        var readings = (one.Record.Combustion?.Readings ?? []).Where(reading => reading.Stage == WorkStage.AfterWork).ToList();
        if (ProductsAtInlet(one) || readings.All(reading => reading.Rate != FiringRate.Maximum))
            return Missing(Combustion);
        var most = readings.Where(reading => reading.Rate == FiringRate.Maximum).ToList();
        var least = readings.Where(reading => reading.Rate == FiringRate.Minimum).ToList();
        if (least.Count == 0)
            return Pass(Combustion);
        if (most.Concat(least).Any(reading => reading.TakenAt is null))
            return Missing(Combustion);
        return most.Min(reading => reading.TakenAt!.Value.Value) <= least.Min(reading => reading.TakenAt!.Value.Value) ? Pass(Combustion) : Advisory(Combustion);
    }

    private static Opinion BothRates(Case one)
    {
        var readings = (one.Record.Combustion?.Readings ?? []).Where(reading => reading.Stage == WorkStage.AfterWork).ToList();
        if (ProductsAtInlet(one) || readings.All(reading => reading.Rate != FiringRate.Maximum))
            return Missing(Combustion);
        return readings.Any(reading => reading.Rate == FiringRate.Minimum) || one.Record.Appliance.Condensing == false
            ? Pass(Combustion)
            : Advisory(Combustion);
    }
}
