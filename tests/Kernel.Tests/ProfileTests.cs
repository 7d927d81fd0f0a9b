using Findings;
using Records;
using Visits;

namespace Kernel.Tests;

/// <summary>A stored maker's profile fills what the record leaves out, vouches for nothing that the record states, and is loosened by nothing without a source.</summary>
public sealed class ProfileTests
{
    private static readonly Lookup Profile = Of(new MakerLimits { CoCo2RatioMax = 0.002m, Source = "profile, page 1" });

    private static readonly Lookup Strict = Of(new MakerLimits
    {
        CoCo2RatioMax = 0.001m,
        CoPpmMax = 80,
        Co2PercentMin = 8.8m,
        Co2PercentMax = 9.0m,
        InletPressureMbarMin = 20.5m,
        BurnerPressureMbar = 12,
        ServiceIntervalMonths = 6,
        SealsToRenew = [JointPlace.GasValveInlet, JointPlace.BurnerDoor],
        Source = "profile, page 1",
    });

    private static readonly MakerLimits Whole = new()
    {
        CoCo2RatioMax = 0.001m,
        CoPpmMax = 80,
        Co2PercentMin = 8.8m,
        Co2PercentMax = 9.0m,
        InletPressureMbarMin = 20.5m,
        BurnerPressureMbar = 12,
        ElectrodeGapMmMin = 3.5m,
        ElectrodeGapMmMax = 4.5m,
        FlueTemperatureCMax = 80,
        ServiceIntervalMonths = 6,
        SealsToRenew = [JointPlace.GasValveInlet],
    };

    /// <summary>The example record is within its own limits and outside every one of the profile's.</summary>
    public static TheoryData<string> RulesOnMakersValues =>
        [Rules.RuleIds.CombustionRatio, Rules.RuleIds.FlueCo, Rules.RuleIds.FlueCo2, Rules.RuleIds.InletPressure, Rules.RuleIds.BurnerPressure, Rules.RuleIds.ServiceInterval, Rules.RuleIds.NextDueRecorded];

    /// <summary>Each limit of the profile, beside a record that states another one only.</summary>
    [Fact]
    public void No_limit_of_a_profile_is_lost_beside_those_of_a_record()
    {
        var filled = Of(Whole).Fill(new MakerLimits { DecisionReference = "D-1" });
        Assert.All(
            typeof(MakerLimits).GetProperties().Where(limit => limit.Name is not (nameof(MakerLimits.Source) or nameof(MakerLimits.DecisionReference))),
            limit => Assert.Equal(limit.GetValue(Whole), limit.GetValue(filled)));
    }

    [Fact]
    public void A_profile_limit_judges_where_the_record_states_none() =>
        Assert.Equal((Outcome.Advisory, "profile, page 1"), Ratio(json => { json["makerLimits"] = null; SetRatio(json, 276); }, Profile));

    [Fact]
    public void A_looser_value_with_its_source_counts_and_is_an_advisory() =>
        Assert.Equal((Outcome.Advisory, "invented installation manual, p. 40"), Ratio(json => SetRatio(json, 276), Profile));

    [Fact]
    public void A_stricter_value_counts_without_a_source() =>
        Assert.Equal(Outcome.Advisory, Ratio(
            json =>
            {
                json["makerLimits"]!["coCo2RatioMax"] = 0.001m;
                json["makerLimits"]!.AsObject().Remove("source");
                SetRatio(json, 100);
            },
            Profile).Outcome);

    [Theory]
    [MemberData(nameof(RulesOnMakersValues))]
    public void A_looser_value_without_a_source_leaves_the_profile_value_in_force(string ruleId)
    {
        var (finding, byProfile) = (Gravest(ruleId, WithBurner(json => json["makerLimits"]!.AsObject().Remove("source"))), Gravest(ruleId, WithBurner(json => json["makerLimits"] = null)));
        Assert.NotEqual(Outcome.Pass, finding.Outcome);
        Assert.Equal((byProfile.Outcome, byProfile.Message), (finding.Outcome, finding.Message));
    }

    [Theory]
    [MemberData(nameof(RulesOnMakersValues))]
    public void A_looser_value_with_its_source_is_an_advisory_under_every_rule(string ruleId)
    {
        var finding = Gravest(ruleId, WithBurner(_ => { }));
        Assert.Equal(Outcome.Advisory, finding.Outcome);
        Assert.DoesNotContain(Samples.Engine.Evaluate(WithBurner(_ => { }), Strict).Missing, missing => missing.NeededBy.Contains(ruleId));
    }

    [Theory]
    [InlineData(false, false, Outcome.Unsafe)]
    [InlineData(false, true, Outcome.Pass)]
    [InlineData(true, false, Outcome.Advisory)]
    public void An_empty_list_of_seals_does_not_empty_the_profile_list(bool isSourced, bool isRenewed, Outcome expected)
    {
        var record = Samples.Changed(json =>
        {
            json["makerLimits"]!["sealsToRenew"] = new System.Text.Json.Nodes.JsonArray();
            if (!isSourced)
                json["makerLimits"]!.AsObject().Remove("source");
            json["disturbedJoints"]![3]!["place"] = "burnerDoor";
            json["disturbedJoints"]![3]!["renewed"] = isRenewed;
        });
        Assert.Equal(expected, Gravest(Rules.RuleIds.MakersSealRenewed, record).Outcome);
    }

    [Fact]
    public void Bands_of_record_and_profile_that_do_not_meet_ask_for_the_source()
    {
        var evaluation = Samples.Engine.Evaluate(
            Samples.Changed(json =>
            {
                json["makerLimits"]!["co2PercentMin"] = 9.1m;
                json["makerLimits"]!.AsObject().Remove("source");
            }),
            Strict);
        Assert.Contains(evaluation.Missing, missing => missing.Pointer == "/makerLimits/source" && missing.NeededBy.Contains(Rules.RuleIds.FlueCo2));
    }

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

    private static Lookup Of(MakerLimits limits) => new() { ProfileId = "P", ProfileVersion = 1, ProfileLimits = limits };

    private static ServiceRecord WithBurner(Action<System.Text.Json.Nodes.JsonNode> change) => Samples.Changed(json =>
    {
        json["makerLimits"]!["burnerPressureMbar"] = 10;
        json["makerLimits"]!["serviceIntervalMonths"] = 12;
        json["gasSupply"]!["burnerMbar"] = 10;
        change(json);
    });

    private static Finding Gravest(string ruleId, ServiceRecord record) =>
        Samples.Engine.Evaluate(record, Strict).Findings.Where(finding => finding.RuleId == ruleId).MinBy(finding => finding.Outcome)!;

    private static (Outcome Outcome, string? Source) Ratio(Action<System.Text.Json.Nodes.JsonNode> change, Lookup lookup)
    {
        var finding = Samples.Engine.Evaluate(Samples.Changed(change), lookup).Findings
            .Single(finding => finding.RuleId == Rules.RuleIds.CombustionRatio && finding.Subject == "/combustion/readings/0");
        return (finding.Outcome, finding.Limit?.Source);
    }
}
