using Findings;
using RuleModel;
using ServiceRecords;

namespace RuleEngine.Tests;

/// <summary>A stored maker's profile fills what the record leaves out, and vouches for nothing that the record states.</summary>
public sealed class ProfileTests
{
    private static readonly Lookup Profile = new()
    {
        ProfileId = "P",
        ProfileVersion = 1,
        ProfileLimits = new MakerLimits { CoCo2RatioMax = 0.002m, Source = "profile, page 1" },
    };

    [Fact]
    public void A_profile_limit_judges_where_the_record_states_none() =>
        Assert.Equal((Outcome.Advisory, "profile, page 1"), Ratio(json => { json["makerLimits"] = null; SetRatio(json, 276); }, Profile));

    [Fact]
    public void The_record_own_value_wins_over_the_profile() =>
        Assert.Equal(Outcome.Pass, Ratio(json => SetRatio(json, 276), Profile).Outcome);

    [Fact]
    public void A_loose_value_without_a_source_does_not_borrow_the_profile_source() =>
        Assert.Equal(Outcome.Advisory, Ratio(
            json =>
            {
                json["makerLimits"]!["coCo2RatioMax"] = 0.006m;
                json["makerLimits"]!.AsObject().Remove("source");
                SetRatio(json, 460);
            },
            Profile).Outcome);

    private static void SetRatio(System.Text.Json.Nodes.JsonNode json, decimal coPpm) => json["combustion"]!["readings"]![0]!["coPpm"] = coPpm;

    private static (Outcome Outcome, string? Source) Ratio(Action<System.Text.Json.Nodes.JsonNode> change, Lookup lookup)
    {
        var finding = Samples.Engine.Evaluate(Samples.Changed(change), lookup).Findings
            .Single(finding => finding.RuleId == Rules.RuleIds.CombustionRatio && finding.Subject == "/combustion/readings/0");
        return (finding.Outcome, finding.Limit?.Source);
    }
}
