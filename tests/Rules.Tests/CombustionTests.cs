using System.Text;
using System.Text.Json.Nodes;
using Findings;

namespace Rules.Tests;

/// <summary>How readings hang together. Invented figures; air inlet before flue, and clean, check, measure again, are BS 7967 practice.</summary>
public sealed class CombustionTests
{
    [Fact]
    public void While_products_reach_the_air_inlet_nothing_about_combustion_passes()
    {
        var evaluation = Judge(combustion =>
        {
            combustion["airInlet"] = new JsonObject { ["o2Percent"] = 19.8, ["co2Percent"] = 0.7 };
            combustion["readings"]![0]!["coPpm"] = 38;
            combustion["readings"]![0]!["co2Percent"] = 10.1;
        });

        var answers = evaluation.Findings.Where(finding => finding.Topic == Topics.Combustion).ToList();
        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Equal(Outcome.Unsafe, Assert.Single(answers, finding => finding.RuleId == RuleIds.AirInletCheck).Outcome);
        Assert.All(answers.Where(finding => finding.RuleId != RuleIds.AirInletCheck), finding => Assert.Equal(
            finding.RuleId is RuleIds.RatioDrift or RuleIds.Co2Drift ? Outcome.NotApplicable : Outcome.Missing, finding.Outcome));
        Assert.False(evaluation.Closing.Allowed);
    }

    [Theory]
    [InlineData("2026-09-14T10:20:00+01:00", 96, true)]
    [InlineData("2026-09-14T10:20:00+01:00", 390, false)]
    [InlineData("2026-09-14T10:00:00+01:00", 96, false)]
    public void A_reading_in_the_action_band_keeps_the_job_open_until_a_later_one_conforms(string takenAt, int coPpm, bool mayClose)
    {
        var evaluation = Judge(combustion =>
        {
            var again = combustion["readings"]![0]!.DeepClone();
            again["takenAt"] = takenAt;
            again["coPpm"] = coPpm;
            combustion["readings"]!.AsArray().Add(again);
            combustion["readings"]![0]!["coPpm"] = 400;
        });

        Assert.Equal(Outcome.Advisory, Assert.Single(RuleSet.AnswersOf(RuleIds.CombustionRatio, evaluation), finding => finding.Subject == "/combustion/readings/0").Outcome);
        Assert.Equal(mayClose, evaluation.Closing.Allowed);
    }

    private static Evaluation Judge(Action<JsonNode> change)
    {
        var record = JsonNode.Parse(RuleSet.Catalogue.ExampleRecord)!;
        change(record["combustion"]!);
        return RuleSet.Engine.Evaluate(RuleSet.Read(Encoding.UTF8.GetBytes(record.ToJsonString())));
    }
}
