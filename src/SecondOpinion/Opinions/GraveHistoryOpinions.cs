using Findings;
using Records;
using Wire;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>
/// What the years say of the burn, of defects and of the plate: the answers over history of which a wrong one costs most. Whoever wrote
/// them had not read the rules.
/// </summary>
internal static class GraveHistoryOpinions
{
    /// <summary>One of twenty steady histories may look like a rising one.</summary>
    private const double Chance = 0.05;

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("appliance-changed", one => [Plate(one)]),
        ("defect-noted-before", Defects),
        ("ratio-drift", one => [RatioRises(one)]),
    ];

    private sealed record Burn(double Ratio, double? Uncertainty, string? Analyser);

    private static Opinion RatioRises(Case one)
    {
        const string At = "/combustion";
        if (Now(one) is not { } now)
            return NotApplicable(At);

        var earlier = SinceTheBurnerWasLastChanged(one).ToList();
        var series = earlier.TakeWhile(then => then.Analyser is not null && then.Analyser == now.Analyser).Prepend(now).ToList();
        if (series.Count >= 4)
            return ChanceOfSuchARise([.. series.Select(burn => burn.Ratio).Reverse()]) < Chance ? Advisory(At) : Pass(At);

        if (earlier is not [var last, ..] || now.Uncertainty is not { } ofNow || last.Uncertainty is not { } ofThen)
            return NotApplicable(At);
        return 1 - Sureness.Normal((now.Ratio - last.Ratio) / double.Hypot(ofNow, ofThen)) < Chance ? Advisory(At) : Pass(At);
    }

    /// <summary>The last reading at maximum rate of how the boiler was left.</summary>
    private static Burn? Now(Case one) =>
        CombustionOpinions.ProductsAtInlet(one) ? null : LastAtMaximum(one, one.Record.Combustion?.Readings);

    /// <summary>The burns of earlier visits, the latest first, one for each day, back to when parts were fitted or another fuel was burnt.</summary>
    private static IEnumerable<Burn> SinceTheBurnerWasLastChanged(Case one)
    {
        if (one.Record.PartsFitted is { Count: > 0 })
            yield break;

        if (one.Record.PreviousVisit is { } stated)
        {
            if (stated.FinishedAt is { } finished && finished.Date != one.Day() && LastAtMaximum(one, stated.Readings, isOfThisVisit: false) is { } burn)
                yield return burn;
            yield break;
        }

        var day = one.Day();
        foreach (var visit in OfThisMaker(one).TakeWhile(visit => visit.Fuel is null || visit.Fuel == WireNames.Of(one.Record.Appliance.Fuel)))
        {
            if (visit.Date != day && visit.Values.FirstOrDefault(value => value.Name == "coCo2Ratio") is { } value)
            {
                day = visit.Date;
                yield return new Burn((double)value.Value, (double?)value.Uncertainty, value.Instrument);
            }

            if (visit.PartsFitted == true)
                yield break;
        }
    }

    private static Burn? LastAtMaximum(Case one, IEnumerable<CombustionReading>? readings, bool isOfThisVisit = true) =>
        (readings ?? []).LastOrDefault(reading => reading is { Rate: FiringRate.Maximum, Stage: WorkStage.AfterWork }) is { } left
        && CombustionOpinions.RatioOf(left) is { } ratio
            ? Read(one, left, (double)ratio, left.Instrument ?? (isOfThisVisit ? OnlyAnalyser(one) : null))
            : null;

    /// <summary>By an analyser of which nothing is known nothing can be told apart.</summary>
    private static Burn Read(Case one, CombustionReading reading, double ratio, string? analyser) =>
        new(ratio, analyser is null ? null : CombustionOpinions.RatioUncertainty(one, reading), analyser);

    private static string? OnlyAnalyser(Case one) =>
        (one.Record.Instruments ?? []).Where(instrument => instrument.Kind == InstrumentKind.FlueGasAnalyser).ToList() is [var only] ? only.SerialNumber : null;

    /// <summary>Of all orders of these values, the share that rises as much or more: the exact test of Mann (1945) and Kendall, equals included.</summary>
    private static double ChanceOfSuchARise(double[] values)
    {
        var scores = Orders(values).Select(Score).ToList();
        var own = Score(values);
        return (double)scores.Count(score => score >= own) / scores.Count;
    }

    private static int Score(double[] values) =>
        values.SelectMany((early, place) => values.Skip(place + 1).Select(late => Math.Sign(late - early))).Sum();

    private static IEnumerable<double[]> Orders(double[] values) => values.Length <= 1
        ? [values]
        : values.SelectMany((first, place) => Orders([.. values.Where((_, other) => other != place)]).Select(rest => (double[])[first, .. rest]));

    private static IEnumerable<Opinion> Defects(Case one)
    {
        if (one.Record.PreviousVisit is not null || OfThisMaker(one).FirstOrDefault(visit => visit.Date != one.Day()) is not { } before)
            return [NotApplicable()];
        return Each("/defects", one.Record.Defects, (defect, at) =>
            defect.Action != DefectAction.Rectified && (before.Defects ?? []).Any(noted => IsTheSame(defect, noted)) ? Advisory(at) : Pass(at));
    }

    /// <summary>
    /// In the same words, or in one subject area at one named place. Places are named too freely to tell two defects apart by them: a defect
    /// that stays for years unnoticed costs more than a look too many.
    /// </summary>
    private static bool IsTheSame(Defect defect, PastDefect noted) =>
        (Named(defect.Description) && AreAlike(defect.Description, noted.Description))
        || (Named(defect.Topic) && AreAlike(defect.Topic, noted.Topic) && Named(defect.Location) && AreAlike(defect.Location, noted.Location));

    private static Opinion Plate(Case one)
    {
        const string At = "/appliance";
        if (one.Record.PreviousVisit is not null || one.History.OrderByDescending(visit => visit.FinishedAt).FirstOrDefault() is not { } before)
            return NotApplicable(At);

        var appliance = one.Record.Appliance;
        if (!Named(appliance.Maker) && Named(before.Maker))
            return Missing(At);
        if (Differ(appliance.Maker, before.Maker))
            return Advisory(At);
        if (appliance.Fuel is null && Named(before.Fuel))
            return Missing(At);
        var fuel = WireNames.Of(appliance.Fuel);
        var isConverted = (one.Record.PartsFitted ?? []).Any(part => part.ForFuel == appliance.Fuel);
        return Differ(appliance.Model, before.Model) || (Differ(fuel, before.Fuel) && !isConverted)
            ? Advisory(At)
            : Pass(At);
    }

    private static IOrderedEnumerable<PastVisit> OfThisMaker(Case one) =>
        one.History.Where(visit => AreAlike(visit.Maker ?? "", one.Record.Appliance.Maker ?? "")).OrderByDescending(visit => visit.FinishedAt);

    private static bool Differ(string? now, string? then) => Named(now) && Named(then) && !AreAlike(now, then);

    private static bool AreAlike(string? now, string? then) => string.Equals(now?.Trim(), then?.Trim(), StringComparison.OrdinalIgnoreCase);

    private static bool Named(string? text) => !string.IsNullOrWhiteSpace(text);
}
