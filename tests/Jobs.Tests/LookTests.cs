using System.Text;
using Calculations;
using Jobs.Looks;
using Jobs.Summary;
using Records;
using Records.Reading;
using Records.Values;
using Storage;

namespace Jobs.Tests;

/// <summary>
/// What is worth a look, in simulated months of an invented firm: honest months alarm no more often than stated, and what was planted is
/// found. Honest readings are normal about their model's values, each rounded to the analyser's display.
/// </summary>
public sealed class LookTests
{
    private const int Engineers = 6;
    private const int VisitsOfEach = 80;
    private const decimal Rate = 0.05m;
    private const double Share = (double)Rate;

    private static readonly DateTimeOffset Start = new(2026, 9, 1, 8, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Honest_months_alarm_as_often_as_stated()
    {
        const int Months = 300;
        var random = new Random(20260901);
        var (tests, low, monthsOfDigits, monthsOfAny) = (0, 0, 0, 0);
        for (var month = 0; month < Months; month++)
        {
            var facts = Facts(HonestMonth(random));
            List<double> chances = [.. Anomalies.LastDigitsOf(facts, []).Select(test => test.Chance)];
            tests += chances.Count;
            low += chances.Count(chance => chance <= 0.05);
            monthsOfDigits += FalseDiscovery.Adjusted(chances).Any(chance => chance <= Share) ? 1 : 0;
            monthsOfAny += Report(facts).Items.Total > 0 ? 1 : 0;
        }

        // CO and flue temperature of each engineer; CO2 spans too few digits. Three standard deviations of the binomial.
        Assert.Equal(Months * Engineers * 2, tests);
        Within(low, tests, 0.05);
        Within(monthsOfDigits, Months, Share);
        Assert.True(monthsOfAny <= Months * Share + 3 * Math.Sqrt(Months * Share * (1 - Share)), $"{monthsOfAny} of {Months} honest months");

        static void Within(int found, int of, double share) =>
            Assert.InRange(found, of * share - 3 * Math.Sqrt(of * share * (1 - share)), of * share + 3 * Math.Sqrt(of * share * (1 - share)));
    }

    [Fact]
    public void Planted_copies_are_found_as_well_as_stated()
    {
        const int Months = 20, Copies = 5;
        var random = new Random(20260902);
        var (found, right) = (0, 0);
        for (var month = 0; month < Months; month++)
        {
            var records = HonestMonth(random);
            var planted = new HashSet<string>(StringComparer.Ordinal);
            for (var copy = 0; copy < Copies; copy++)
            {
                // The readings of one visit of an engineer stand in another one as well.
                var (from, to) = (copy * VisitsOfEach, copy * VisitsOfEach + 20);
                records[to] = With(records[to], records[from].Combustion!);
                planted.Add(Pair(records[from].RecordId, records[to].RecordId));
            }

            var pairs = Report(Facts(records)).Items.Rows.Where(item => item.Kind == LookKind.SameReadings).Select(item => Pair([.. item.Records.Select(record => record.RecordId)])).ToList();
            found += pairs.Count;
            right += pairs.Count(planted.Contains);
        }

        Stated.Holds("readings of one visit copied into another, five among the 480 visits of a month, in twenty months", Months * Copies, right, found - right);

        static string Pair(params string[] ids) => string.Join(' ', ids.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Invented_last_digits_are_found_and_belong_to_who_invented_them()
    {
        var random = new Random(20260903);
        var (found, others) = (0, 0);
        const int Months = 20;
        for (var month = 0; month < Months; month++)
        {
            // Two in three of one engineer's CO readings end in 0 or 5.
            var records = HonestMonth(random).Select(record => record.Engineer!.LicenceNumber == "700002" ? With(record, Favoured(record.Combustion!, random)) : record);
            var items = Report(Facts(records)).Items.Rows.Where(item => item.Kind == LookKind.LastDigits).ToList();
            found += items.Count(item => (item.Engineer, item.Quantity, item.Instrument) == ("700002", "coPpm", "FGA-2"));
            others += items.Count(item => item.Engineer != "700002");
        }

        Stated.Holds("an engineer of six two thirds of whose CO readings end in 0 or 5, in twenty months", Months, found, others);
    }

    [Fact]
    public void An_analyser_at_two_places_and_a_visit_shorter_than_its_work_are_found_for_certain()
    {
        var records = HonestMonth(new Random(20260904));
        var second = Visit(new Random(1), engineer: 4, number: 900, start: records[7].StartedAt!.Value.Value.AddMinutes(20), analyser: "FGA-0");
        var back = Visit(new Random(2), engineer: 5, number: 901, start: Start.AddDays(40), minutes: 20);

        var items = Report(Facts([.. records, second, back])).Items.Rows;

        var twice = Assert.Single(items, item => item.Kind == LookKind.AnalyserInTwoPlaces);
        Assert.Equal(("FGA-0", null, null), (twice.Instrument, twice.Engineer, twice.Chance));
        Assert.Equal([records[7].RecordId, second.RecordId], twice.Records.Select(record => record.RecordId));
        var brief = Assert.Single(items, item => item.Kind == LookKind.ShorterThanItsWork);
        Assert.Equal(("700005", back.RecordId), (brief.Engineer, brief.Records[0].RecordId));
        Assert.Contains("the shortest of 20 minutes", brief.WorthALook, StringComparison.Ordinal);
        Assert.DoesNotContain(items, item => item.WorthALook.Contains("fraud", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Two_analysers_one_place_and_the_same_appliance_again_are_nothing()
    {
        var random = new Random(20260905);
        var one = Visit(random, 1, 1, Start);
        var sameAppliance = With(Visit(random, 1, 2, Start.AddDays(30)), one.Combustion!, one.Appliance.SerialNumber);

        Assert.Equal(0, Report(Facts([one, sameAppliance, Visit(random, 2, 3, Start)])).Items.Total);
    }

    [Fact]
    public void Fewer_than_fifty_readings_are_refused_and_said_to_be()
    {
        var report = Report(Facts(HonestMonth(new Random(20260906)).Take(24)));

        Assert.Equal(3, report.Refused.Total);
        Assert.All(report.Refused.Rows, refusal => Assert.Equal((48, "tooFew", "FGA-0"), (refusal.Readings, refusal.Why, refusal.Instrument)));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Out_of_the_store_come_the_current_records_of_the_period_and_the_tenant(string kind)
    {
        using var scratch = new Scratch();
        var database = scratch.Open(kind);
        var evaluations = new EvaluationStore(database, Scratch.Rules.Law);
        for (var number = 0; number < 4; number++)
        {
            // The first comes twice, and is one visit.
            var posted = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Scratch.Posted).Replace("\"HB-0001\"", $"\"L-{Math.Max(number, 1)}\"", StringComparison.Ordinal));
            Assert.True(await evaluations.SaveAsync(number == 3 ? Scratch.B : Scratch.A, RecordReader.Read(posted).Record!, posted, Scratch.Evaluation(number), Findings.Include.Passes, default));
        }

        var looks = new LookStore(database);
        async Task<int> Records(string from, string to) =>
            (await looks.FindAsync(Scratch.A, DateOnly.Parse(from, System.Globalization.CultureInfo.InvariantCulture), DateOnly.Parse(to, System.Globalization.CultureInfo.InvariantCulture), Rate, default))!.Records;
        Assert.Equal((2, 0, 0), (await Records("2026-09-14", "2026-09-14"), await Records("2026-09-15", "2026-10-14"), await Records("2026-08-14", "2026-09-13")));
    }

    private static LookReport Report(IReadOnlyList<LookFacts> facts) => Anomalies.Report(new(2026, 9, 1), new(2026, 9, 30), Rate, facts);

    private static List<LookFacts> Facts(IEnumerable<ServiceRecord> records) => [.. records.Select(record => LookFacts.Of(record.RecordId, record))];

    /// <summary>Each engineer has an analyser and goes from home to home, four a day.</summary>
    private static List<ServiceRecord> HonestMonth(Random random) =>
    [
        .. Enumerable.Range(0, Engineers).SelectMany(engineer => Enumerable.Range(0, VisitsOfEach)
            .Select(visit => Visit(random, engineer, engineer * VisitsOfEach + visit, Start.AddDays(visit / 4).AddHours(visit % 4 * 2)))),
    ];

    private static ServiceRecord Visit(Random random, int engineer, int number, DateTimeOffset start, string? analyser = null, int minutes = 85) => new()
    {
        RecordId = $"V-{number}",
        JobType = JobType.AnnualService,
        Jurisdiction = "GB-ENG",
        StartedAt = Timestamp.Parse($"{start:yyyy-MM-dd'T'HH:mm:ss}Z"),
        FinishedAt = Timestamp.Parse($"{start.AddMinutes(minutes):yyyy-MM-dd'T'HH:mm:ss}Z"),
        Engineer = new Engineer { LicenceNumber = $"70000{engineer}" },
        Appliance = new Appliance { Fuel = Fuel.NaturalGas, Maker = "Quillback", Model = "Tarn 25", SerialNumber = $"QB-{number}" },
        Premises = new Premises { Reference = $"home {number}" },
        Instruments = [new Instrument { Kind = InstrumentKind.FlueGasAnalyser, SerialNumber = analyser ?? $"FGA-{engineer}" }],
        HeatExchanger = new HeatExchanger { MinutesSpent = 30 },
        Combustion = new Combustion
        {
            SettledMinutes = 10,
            Readings = [Reading(random, FiringRate.Maximum, 180, 30, 9.2, 62), Reading(random, FiringRate.Minimum, 90, 18, 8.7, 52)],
        },
    };

    private static CombustionReading Reading(Random random, FiringRate rate, double co, double spread, double co2, double flue) => new()
    {
        Rate = rate,
        Stage = WorkStage.AfterWork,
        CoPpm = Near(random, co, spread, 0),
        Co2Percent = Near(random, co2, 0.15, 1),
        FlueTemperatureC = Near(random, flue, 4, 1),
    };

    private static decimal Near(Random random, double middle, double spread, int decimals) =>
        Math.Round((decimal)(middle + spread * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble())), decimals);

    private static Combustion Favoured(Combustion combustion, Random random) => new()
    {
        SettledMinutes = combustion.SettledMinutes,
        Readings = [.. combustion.Readings!.Select(reading => new CombustionReading
        {
            Rate = reading.Rate,
            Stage = reading.Stage,
            CoPpm = random.Next(3) < 2 ? Math.Round(reading.CoPpm!.Value / 5) * 5 : reading.CoPpm,
            Co2Percent = reading.Co2Percent,
            FlueTemperatureC = reading.FlueTemperatureC,
        })],
    };

    private static ServiceRecord With(ServiceRecord record, Combustion combustion, string? serialNumber = null) => new()
    {
        RecordId = record.RecordId,
        JobType = record.JobType,
        Jurisdiction = record.Jurisdiction,
        StartedAt = record.StartedAt,
        FinishedAt = record.FinishedAt,
        Engineer = record.Engineer,
        Appliance = new Appliance { Fuel = record.Appliance.Fuel, Maker = record.Appliance.Maker, Model = record.Appliance.Model, SerialNumber = serialNumber ?? record.Appliance.SerialNumber },
        Premises = record.Premises,
        Instruments = record.Instruments,
        HeatExchanger = record.HeatExchanger,
        Combustion = combustion,
    };
}
