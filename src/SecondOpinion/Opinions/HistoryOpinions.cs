using Findings;
using Records;
using Wire;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

/// <summary>What earlier visits say beside this one. The chance of an order is counted over every order of the values.</summary>
internal static class HistoryOpinions
{
    private sealed record Point(decimal Value, double? Sureness, string? Instrument, decimal? Load = null);

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("co2-drift", c => Drift(c, "/combustion", "co2Percent", OfCleanAir(c, Co2(c, Last(c.Record.Combustion?.Readings))), up: null)),
        ("flue-above-return-drift", c => Drift(c, "/water/returnTemperatureC", "flueAboveReturnK", OfCleanAir(c, AboveReturn(c)), up: true)),
        ("danger-left-before", DangersLeftBefore),
        ("precharge-drift", c => Drift(c, "/water/vesselPrechargeBar", "vesselPrechargeBar",
            By(c, "vesselPrechargeBar", c.Record.Water?.VesselPrechargeBar, InstrumentKind.PressureGauge), up: false)),
        ("flame-current-drift", c => Drift(c, "/burner/flameCurrentMicroamps", "flameCurrentMicroamps",
            By(c, "flameCurrentMicroamps", c.Record.Burner?.FlameCurrentMicroamps, InstrumentKind.Multimeter), up: false)),
        ("same-readings-as-before", c => On("", SameReadings(c))),
    ];

    /// <summary>Stored visits to this maker's appliance, the latest first; none where the record states its previous visit.</summary>
    public static IReadOnlyList<PastVisit> Past(this Case c) => c.Record.PreviousVisit is null
        ? [.. c.History.Where(visit => Like(visit.Maker, c.Record.Appliance.Maker)).OrderByDescending(visit => visit.FinishedAt)]
        : [];

    // Whatever the record itself states as its previous visit: a danger that was left waits until somebody speaks of it. It goes with the boiler:
    // one of another maker is another; where either maker is not named it may be the same.
    private static IEnumerable<Opinion> DangersLeftBefore(Case c)
    {
        const string Defects = "/defects";
        if (WorkOpinions.IsNothingReached(c))
            return On("", Outcome.NotApplicable);
        var visits = c.History.Where(visit => !Given(visit.Maker) || !Given(c.Record.Appliance.Maker) || Like(visit.Maker, c.Record.Appliance.Maker)).ToList();
        var waiting = visits.SelectMany(visit => (visit.Dangers ?? []).Where(danger => danger.IsLeft && !visits.Exists(later => later.FinishedAt > visit.FinishedAt && Speaks(later, danger)))).ToList();
        return waiting.Count == 0 ? On("", Outcome.NotApplicable)
            : On(Defects, Agrees(waiting.TrueForAll(danger => c.Record.Defects?.Any(defect => Speaks(defect, danger)) == true)));
    }

    private static bool Speaks(PastVisit later, PastDanger danger) => later.Defects?.Any(defect => defect.Action == "rectified" && IsAbout(danger, defect.Subject, defect.Topic)) == true
        || later.Dangers?.Any(own => IsAbout(danger, own.Subject, own.Topic)) == true;

    private static bool Speaks(Defect defect, PastDanger danger) => IsGrave(defect) && !IsOfAnotherAppliance(defect) && IsAbout(danger, defect.Subject, defect.Topic);

    // What names a place is about that place and no other; without one on either side the topic has to do. Numbers in lists are those of one record.
    private static bool IsAbout(PastDanger danger, string? subject, string? topic)
    {
        var (own, other) = (Unnumbered(subject), Unnumbered(danger.Subject));
        return own is null || other is null ? IsSame(topic, danger.Topic) : IsOneInTheOther(own, other);
    }

    private static string? Unnumbered(string? place)
    {
        var kept = string.Join('/', (place ?? "").Split('/').TakeWhile(part => part is "" || !char.IsAsciiDigit(part[0])));
        return kept is "" or "/defects" ? null : kept;
    }

    // A scratch beside it says nothing of the danger: one that is still there is classed as such, and of one that is gone somebody looked again.
    private static bool IsGrave(Defect defect) => defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous
        || defect is { Action: DefectAction.Rectified, ReexaminedAt: not null };

    // The cooker's hose says nothing of the boiler. A defect that names a place of the record is the boiler's, whatever it says.
    private static bool IsOfAnotherAppliance(Defect defect) => defect.Concerns == DefectConcern.OtherAppliance && !Given(defect.Subject);

    private static bool IsOneInTheOther(string place, string other) => Pages.IsWithin(place, other) || Pages.IsWithin(other, place);

    private static bool IsSame(string? topic, string? other) => topic is not null && topic == other;

    private static Point? OfCleanAir(Case c, Point? point) => CombustionOpinions.ProductsAtInlet(c) ? null : point;

    private static bool Like(string? one, string? other) => (one ?? "").Trim().Equals((other ?? "").Trim(), StringComparison.OrdinalIgnoreCase);

    private static CombustionReading? Last(IEnumerable<CombustionReading>? readings) =>
        readings?.LastOrDefault(reading => reading is { Rate: FiringRate.Maximum, Stage: WorkStage.AfterWork });

    private static IEnumerable<Opinion> Drift(Case c, string subject, string name, Point? now, bool? up)
    {
        if (now is null)
            return On(subject, Outcome.NotApplicable);

        var points = Comparable(c, name, now);
        if (points.Count == 0)
            return On(subject, Outcome.NotApplicable);

        var run = now.Instrument is null ? 0 : points.TakeWhile(point => point.Instrument == now.Instrument).Count();
        double? chance = run >= 3 ? OfOrder([.. points.Take(run).Reverse().Append(now).Select(point => point.Value)], up)
            : points[0].Sureness is { } before && now.Sureness is { } after ? OfPair((double)(now.Value - points[0].Value) / Math.Sqrt((before * before) + (after * after)), up)
            : null;
        return On(subject, chance is { } known ? Pass(!((decimal)known < c.Limit("drift-probability")!.Min)) : Outcome.NotApplicable);
    }

    // The latest first, one for each day; a visit with new parts or another fuel is the first of its series.
    private static List<Point> Comparable(Case c, string name, Point now)
    {
        if (c.Record.PreviousVisit is { } stated)
        {
            return c.Record.PartsFitted is { Count: > 0 } || stated.FinishedAt is null || stated.FinishedAt.Value.Date == c.Day() || Stated(c, stated, name) is not { } only || !IsLoadNear(c, now, only) ? [] : [only];
        }

        var points = new List<Point>();
        if (c.Record.PartsFitted is { Count: > 0 })
            return points;
        var day = c.Day();
        foreach (var visit in c.Past().TakeWhile(visit => visit.Fuel is null || visit.Fuel == WireNames.Of(c.Record.Appliance.Fuel)))
        {
            if (visit.Date != day && visit.Values.FirstOrDefault(value => value.Name == name) is { } value
                && new Point(value.Value, (double?)value.Uncertainty, value.Instrument, value.LoadPercent) is var point && IsLoadNear(c, now, point))
            {
                day = visit.Date;
                points.Add(point);
            }

            if (visit.PartsFitted == true)
                break;
        }

        return points;
    }

    private static bool IsLoadNear(Case c, Point now, Point then) =>
        now.Load is not { } load || (then.Load is { } other && Math.Abs(load - other) <= c.Limit("drift-load-difference")!.Max);

    private static Point? Stated(Case c, PreviousVisit stated, string name)
    {
        var reading = Last(stated.Readings);
        return name switch
        {
            "co2Percent" => Co2(c, reading, isOfThisVisit: false),
            "flueAboveReturnK" when reading is { FlueTemperatureC: { } flue, LoadPercent: { } load } && stated.ReturnTemperatureC is { } returned =>
                new Point(flue - returned, null, Analyser(c, reading, isOfThisVisit: false), load),
            _ => null,
        };
    }

    private static Point? Co2(Case c, CombustionReading? reading, bool isOfThisVisit = true) => reading is { Co2Percent: { } co2 }
        ? new Point(co2, Sure(c, "co2Percent", co2, reading, isOfThisVisit), Analyser(c, reading, isOfThisVisit))
        : null;

    private static Point? AboveReturn(Case c)
    {
        if (Last(c.Record.Combustion?.Readings) is not { FlueTemperatureC: { } flue, LoadPercent: { } load } reading || c.Record.Water?.ReturnTemperatureC is not { } returned)
            return null;
        var (one, other) = (Sure(c, "flueTemperatureC", flue, reading, true), Sureness.Of(c, "returnTemperatureC", returned, InstrumentKind.Thermometer));
        return new Point(flue - returned, one is null || other is null ? null : Math.Sqrt((one * one + other * other).Value), Analyser(c, reading, true), load);
    }

    private static Point? By(Case c, string quantity, decimal? value, InstrumentKind kind) => value is { } read
        ? new Point(read, Sureness.Of(c, quantity, read, kind), Only(c, kind))
        : null;

    private static double? Sure(Case c, string quantity, decimal value, CombustionReading reading, bool isOfThisVisit) =>
        isOfThisVisit || reading.Instrument is not null ? Sureness.OfAnalyser(c, quantity, value, reading.Instrument) : null;

    private static string? Analyser(Case c, CombustionReading reading, bool isOfThisVisit) =>
        reading.Instrument ?? (isOfThisVisit ? Only(c, InstrumentKind.FlueGasAnalyser) : null);

    private static string? Only(Case c, InstrumentKind kind) =>
        (c.Record.Instruments ?? []).Where(instrument => instrument.Kind == kind).ToList() is [var only] ? only.SerialNumber : null;

    private static double OfPair(double z, bool? up) => up switch
    {
        true => Sureness.Normal(-z),
        false => Sureness.Normal(z),
        null => 2 * Sureness.Normal(-Math.Abs(z)),
    };

    private static double OfOrder(decimal[] values, bool? up)
    {
        var scores = new List<int>();
        Permute(values, 0, scores);
        var seen = Score(values);
        double Share(Func<int, bool> counts) => scores.Count(counts) / (double)scores.Count;
        return up switch
        {
            true => Share(score => score >= seen),
            false => Share(score => score <= seen),
            null => Math.Min(1, 2 * Math.Min(Share(score => score >= seen), Share(score => score <= seen))),
        };
    }

    private static void Permute(decimal[] values, int at, List<int> scores)
    {
        if (at == values.Length)
            scores.Add(Score(values));
        for (var other = at; other < values.Length; other++)
        {
            (values[at], values[other]) = (values[other], values[at]);
            Permute(values, at + 1, scores);
            (values[at], values[other]) = (values[other], values[at]);
        }
    }

    private static int Score(decimal[] values) =>
        values.SelectMany((earlier, index) => values.Skip(index + 1).Select(later => Math.Sign(later - earlier))).Sum();

    private static PastVisit? DayBefore(Case c) => c.Past().FirstOrDefault(visit => visit.Date != c.Record.FinishedAt.Date);

    private static Outcome SameReadings(Case c)
    {
        var reading = Last(c.Record.Combustion?.Readings);
        var supply = c.Record.GasSupply;
        (string, decimal?)[] flue = [("coPpm", reading?.CoPpm), ("co2Percent", reading?.Co2Percent), ("o2Percent", reading?.O2Percent), ("flueTemperatureC", reading?.FlueTemperatureC)];
        (string, decimal?)[] gas =
        [
            ("meterStandingMbar", supply?.MeterStandingMbar), ("meterOperatingMbar", supply?.MeterOperatingMbar),
            ("applianceInletMbar", supply?.ApplianceInletMbar), ("burnerMbar", supply?.BurnerMbar),
        ];
        Dictionary<string, decimal>? then = null;
        if (c.Record.PreviousVisit is { } stated)
        {
            if (stated.FinishedAt is { } finished && finished.Date != c.Record.FinishedAt.Date && Last(stated.Readings) is { } before)
            {
                then = new (string Name, decimal? Value)[] { ("coPpm", before.CoPpm), ("co2Percent", before.Co2Percent), ("o2Percent", before.O2Percent), ("flueTemperatureC", before.FlueTemperatureC) }
                    .Where(one => one.Value is not null).ToDictionary(one => one.Name, one => one.Value!.Value, StringComparer.Ordinal);
            }
        }
        else
        {
            then = DayBefore(c)?.Values.ToDictionary(value => value.Name, value => value.Value, StringComparer.Ordinal);
        }

        if (then is null)
            return Outcome.NotApplicable;
        var both = new[] { (gas, 2), (flue, 3) }
            .Select(group => (Pairs: group.Item1.Where(one => one.Item2 is not null && then.ContainsKey(one.Item1)).ToList(), group.Item2))
            .Where(group => group.Pairs.Count >= group.Item2).ToList();
        return both.Count == 0 ? Outcome.NotApplicable : Pass(!both.Exists(group => group.Pairs.TrueForAll(one => then[one.Item1] == one.Item2)));
    }
}
