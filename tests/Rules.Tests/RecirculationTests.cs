using System.Text;
using System.Text.Json.Nodes;
using Findings;

namespace Rules.Tests;

/// <summary>
/// A flue whose products come back through the air inlet can burn clean at the sampling point. Invented figures; the check of the
/// inlet before the flue is BS 7967 practice.
/// </summary>
public sealed class RecirculationTests
{
    [Fact]
    public void While_products_reach_the_air_inlet_nothing_about_combustion_passes()
    {
        var record = JsonNode.Parse(RuleSet.Catalogue.ExampleRecord)!;
        record["combustion"]!["airInlet"] = new JsonObject { ["o2Percent"] = 19.8, ["co2Percent"] = 0.7 };
        record["combustion"]!["readings"]![0]!["coPpm"] = 38;
        record["combustion"]!["readings"]![0]!["co2Percent"] = 10.1;

        var evaluation = RuleSet.Engine.Evaluate(RuleSet.Read(Encoding.UTF8.GetBytes(record.ToJsonString())));

        var combustion = evaluation.Findings.Where(finding => finding.Topic == Topics.Combustion).ToList();
        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Equal(Outcome.Unsafe, Assert.Single(combustion, finding => finding.RuleId == RuleIds.AirInletCheck).Outcome);
        Assert.All(combustion.Where(finding => finding.RuleId != RuleIds.AirInletCheck), finding => Assert.Equal(Outcome.Missing, finding.Outcome));
        Assert.False(evaluation.Closing.Allowed);
    }

    [Fact]
    public void The_example_record_has_no_problem()
    {
        var evaluation = RuleSet.Engine.Evaluate(RuleSet.Read(RuleSet.Catalogue.ExampleRecord.ToArray()));

        Assert.Empty(evaluation.Findings.Where(finding => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable)).Select(finding => $"{finding.RuleId}: {finding.Message}"));
        Assert.Equal(OverallOutcome.Pass, evaluation.Outcome);
    }
}
