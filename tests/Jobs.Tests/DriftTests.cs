using System.Text;
using System.Text.Json.Nodes;
using Findings;
using Records;
using Records.Reading;
using Rules;
using Visits;
using Visits.Facts;
using Visits.History;

namespace Jobs.Tests;

/// <summary>Drifts that were planted into the histories of invented boilers, told by the rule on the CO/CO2 ratio with steady ones beside them.</summary>
public sealed class DriftTests
{
    private const int Boilers = 1000;
    private const int Visits = 6;
    private const double Deviation = 4;

    [Theory]
    [InlineData(1, "by its scatter")]
    [InlineData(2, "by twice its scatter")]
    public void Planted_drifts_are_told_as_well_as_stated(double deviationsAVisit, string by)
    {
        var random = new Random(20260907);
        var (planted, right, others) = (0, 0, 0);
        for (var boiler = 0; boiler < Boilers; boiler++)
        {
            var drifts = boiler % 10 == 0;
            var visits = Enumerable.Range(0, Visits).Select(visit => Visit(2021 + visit, 96 + (drifts ? deviationsAVisit * Deviation * visit : 0) + Deviation * Normal(random))).ToList();
            var isTold = IsTold(visits);
            planted += drifts ? 1 : 0;
            right += drifts && isTold ? 1 : 0;
            others += !drifts && isTold ? 1 : 0;
        }

        Stated.Holds($"a CO/CO2 ratio that rises {by} from each of six visits to the next, one boiler in ten", planted, right, others);
    }

    /// <summary>The exact test takes 60 values at most; an appliance may have more visits than that.</summary>
    [Theory]
    [InlineData(61)]
    [InlineData(500)]
    public void Of_more_visits_than_the_test_can_take_the_latest_count(int earlier)
    {
        var example = Visit(2026, 96);
        var today = VisitFacts.Of(example);
        List<PastVisit> history = [.. Enumerable.Range(1, earlier).Select(ago => today with
        {
            FinishedAt = today.FinishedAt.AddDays(-ago),
            Values = [.. today.Values.Select(value => value.Name == MeasuredNames.CoCo2Ratio ? value with { Value = value.Value - ago * 1e-7m } : value)],
        })];

        var finding = Scratch.Rules.Evaluate(example, new Lookup { History = history }).Findings.Single(finding => finding.RuleId == RuleIds.RatioDrift);
        var trend = ReadingTrend.Of([today, .. history], Scratch.Rules.Catalogue.Limits, Scratch.Rules.Law).Single(trend => trend.Quantity == MeasuredNames.CoCo2Ratio);

        Assert.Equal(Outcome.Advisory, finding.Outcome);
        Assert.Equal((60, 60, today.Date.AddDays(-59), today.Date), (trend.Visits, trend.OfOneInstrument, trend.FirstOn, trend.LastOn));
    }

    private static bool IsTold(List<ServiceRecord> visits) => Scratch.Rules
        .Evaluate(visits[^1], new Lookup { History = [.. visits.SkipLast(1).Reverse().Select(VisitFacts.Of)] })
        .Findings.Single(finding => finding.RuleId == RuleIds.RatioDrift).Outcome == Outcome.Advisory;

    /// <summary>The example record in another year, with this much CO at maximum rate, as an analyser displays it.</summary>
    private static ServiceRecord Visit(int year, double coPpm)
    {
        var json = JsonNode.Parse(Encoding.UTF8.GetString(Scratch.Posted).Replace("2026-", $"{year}-", StringComparison.Ordinal))!;
        json.AsObject().Remove("previousVisit");
        json["combustion"]!["readings"]![0]!["coPpm"] = Math.Round(coPpm);
        return RecordReader.Read(Encoding.UTF8.GetBytes(json.ToJsonString())).Record!;
    }

    /// <summary>By Box and Muller.</summary>
    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
