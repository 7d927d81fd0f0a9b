using System.Globalization;
using Calculations;
using Jobs.Summary;
using Wire;

namespace Jobs.Looks;

/// <summary>Finds what in many records is worth a look. What rests on chance is judged over all tests together.</summary>
internal static class Anomalies
{
    /// <summary>Fewest values that make two visits' readings comparable.</summary>
    private const int FewestValues = 4;

    /// <summary>Fewest records by which the values of like appliances are told apart from those of all.</summary>
    private const int FewestAlike = 50;

    private const int MostRecords = 50;

    /// <summary>A chance below the last of them is shown as 0.</summary>
    private const int Decimals = 12;

    private static readonly string[] Cautions =
    [
        "Worth a look is no accusation: a shared analyser, a mistyped time or serial number, a copied form or mere chance explain many of these. Ask before you conclude.",
        "Chances hold for values that are independent of each other among like appliances, and for records that were not chosen. Nothing here says anything of the safety of a boiler.",
    ];

    public static LookReport Report(DateOnly from, DateOnly to, decimal rate, IReadOnlyList<LookFacts> all)
    {
        var tests = SameReadings(all).ToList();
        var refusals = new List<LookRefusal>();
        tests.AddRange(LastDigitsOf(all, refusals));
        var unlikely = tests.Zip(FalseDiscovery.Adjusted([.. tests.Select(test => test.Chance)]), (test, adjusted) => (Test: test, Adjusted: adjusted))
            .Where(pair => pair.Adjusted <= (double)rate).OrderBy(pair => pair.Test.Chance)
            .Select(pair => pair.Test.Item with { Chance = Shown(pair.Test.Chance), AdjustedChance = Shown(pair.Adjusted) });
        List<LookItem> items = [.. InTwoPlaces(all), .. TooShort(all), .. unlikely];
        return new LookReport
        {
            From = from,
            To = to,
            Records = all.Count,
            Tests = tests.Count,
            FalseDiscoveryRate = rate,
            Items = new SummaryTable<LookItem> { Total = items.Count, Rows = [.. items.Take(SummaryParts.MostRows)] },
            Refused = new SummaryTable<LookRefusal> { Total = refusals.Count, Rows = [.. refusals.Take(SummaryParts.MostRows)] },
            Cautions = Cautions,
        };
    }

    /// <summary>
    /// One test for each set of values that occurs: how many other appliances have the same, where as many are expected as the frequency
    /// of each value among like appliances makes it.
    /// </summary>
    internal static IEnumerable<LookTest> SameReadings(IReadOnlyList<LookFacts> all)
    {
        var comparable = all.Where(facts => facts.Appliance is not null && facts.Values.Count >= FewestValues).ToList();
        var sizes = comparable.CountBy(facts => facts.Like, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        string PoolOf(LookFacts facts) => sizes[facts.Like] >= FewestAlike ? facts.Like : "";
        var totals = comparable.SelectMany(facts => facts.Values.Select(value => (PoolOf(facts), value.What))).CountBy(key => key).ToDictionary();
        var counts = comparable.SelectMany(facts => facts.Values.Select(value => (PoolOf(facts), value.What, value.Value))).CountBy(key => key).ToDictionary();
        var pools = comparable.CountBy(PoolOf, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        foreach (var group in comparable.GroupBy(facts => string.Join(' ', facts.Values.Select(value => FormattableString.Invariant($"{value.What}={value.Value / 1.0000000000000000m}"))), StringComparer.Ordinal))
        {
            var first = group.First();
            var pool = PoolOf(first);
            var alike = group.DistinctBy(facts => facts.Appliance, StringComparer.Ordinal).ToList();
            var share = first.Values.Aggregate(1.0, (product, value) => product * counts[(pool, value.What, value.Value)] / totals[(pool, value.What)]);
            var expected = share * (pools[pool] - 1);
            yield return new LookTest(ChanceTails.PoissonAtLeast(Math.Min(alike.Count - 1, 1000), expected), new LookItem
            {
                Kind = LookKind.SameReadings,
                WorthALook = FormattableString.Invariant($"{alike.Count} appliances have the same {first.Values.Count} flue readings to the last digit."),
                Engineer = alike.Select(facts => facts.Engineer).Distinct(StringComparer.Ordinal).ToList() is [{ } only] ? only : null,
                RecordsTotal = alike.Count,
                Records = Shown(alike),
            });
        }
    }

    internal static IEnumerable<LookTest> LastDigitsOf(IReadOnlyList<LookFacts> all, List<LookRefusal> refusals)
    {
        var readings = all.SelectMany(facts => facts.Readings.Select(reading => (Facts: facts, reading.Analyser, reading.Quantity, reading.Value))).ToList();
        foreach (var display in readings.GroupBy(reading => (reading.Analyser, reading.Quantity)).OrderBy(group => group.Key))
        {
            // The display's step is what all its readings have in common, whoever took them.
            var step = LastDigits.StepOf([.. display.Select(reading => reading.Value)]);
            foreach (var own in display.Where(reading => reading.Facts.Engineer is not null).GroupBy(reading => reading.Facts.Engineer!, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
            {
                var (instrument, quantity) = display.Key;
                var test = LastDigits.Of([.. own.Select(reading => reading.Value)], step ?? 0);
                if (test.Refusal is { } why)
                {
                    refusals.Add(new LookRefusal { Engineer = own.Key, Instrument = instrument, Quantity = quantity, Readings = own.Count(), Why = WireNames.Of(why) });
                    continue;
                }

                var records = own.Select(reading => reading.Facts).Distinct().ToList();
                yield return new LookTest(test.Chance, new LookItem
                {
                    Kind = LookKind.LastDigits,
                    WorthALook = FormattableString.Invariant($"The last digits of {own.Count()} readings are less even than the display: {string.Join(", ", test.Counts)} from the lowest digit on."),
                    Engineer = own.Key,
                    Instrument = instrument,
                    Quantity = quantity,
                    RecordsTotal = records.Count,
                    Records = Shown(records),
                });
            }
        }
    }

    internal static IEnumerable<LookItem> InTwoPlaces(IReadOnlyList<LookFacts> all)
    {
        var uses = all.Where(facts => facts.Started is not null && facts.Place is not null).SelectMany(facts => facts.Analysers.Select(analyser => (Analyser: analyser, Facts: facts)));
        foreach (var analyser in uses.GroupBy(use => use.Analyser, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            LookFacts? latest = null;
            foreach (var (_, facts) in analyser.OrderBy(use => use.Facts.Started).ThenBy(use => use.Facts.Record.Evaluation, StringComparer.Ordinal))
            {
                if (latest is not null && facts.Started < latest.Record.FinishedAt && facts.Place != latest.Place)
                {
                    yield return new LookItem
                    {
                        Kind = LookKind.AnalyserInTwoPlaces,
                        WorthALook = FormattableString.Invariant($"The analyser was in use at two places at once, from {facts.Started:yyyy-MM-dd HH:mm} UTC on."),
                        Instrument = analyser.Key,
                        Engineer = facts.Engineer == latest.Engineer ? facts.Engineer : null,
                        RecordsTotal = 2,
                        Records = [latest.Record, facts.Record],
                    };
                }

                latest = latest is null || facts.Record.FinishedAt > latest.Record.FinishedAt ? facts : latest;
            }
        }
    }

    internal static IEnumerable<LookItem> TooShort(IReadOnlyList<LookFacts> all) => all
        .Where(facts => facts.Started is not null && Minutes(facts) < Math.Max(1, facts.WorkMinutes))
        .GroupBy(facts => facts.Engineer ?? "", StringComparer.Ordinal)
        .OrderByDescending(visits => visits.Count()).ThenBy(visits => visits.Key, StringComparer.Ordinal)
        .Select(visits => new LookItem
        {
            Kind = LookKind.ShorterThanItsWork,
            WorthALook = string.Create(CultureInfo.InvariantCulture, $"{visits.Count()} visits are shorter than the time that they record at the heat exchanger and for settling, the shortest of {visits.Min(Minutes):0} minutes."),
            Engineer = visits.Key.Length > 0 ? visits.Key : null,
            RecordsTotal = visits.Count(),
            Records = Shown(visits),
        });

    private static decimal Shown(double chance) => decimal.Round((decimal)chance, Decimals);

    private static decimal Minutes(LookFacts facts) => (decimal)(facts.Record.FinishedAt - facts.Started!.Value).TotalMinutes;

    private static List<LookRecord> Shown(IEnumerable<LookFacts> facts) => [.. facts.Select(one => one.Record).Take(MostRecords)];
}

/// <summary>A test of chance.</summary>
/// <param name="Chance">Chance of something as unlikely or more in honest records, in double.</param>
/// <param name="Item">What it would point at.</param>
internal sealed record LookTest(double Chance, LookItem Item);
