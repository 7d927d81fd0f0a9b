using System.Text;
using System.Text.Json.Nodes;
using Findings;
using Kernel.Catalogues;
using Rules;
using Visits;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>The deployer's own limits. Those here are made up, the bands of Edition 4 above all: nobody read them anywhere.</summary>
public sealed class OverridesTests
{
    private const string Tighter = """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar" }""";
    private const string Looser = """{ "id": "cold-fill", "min": 0.7, "max": 1.5, "unit": "bar", "loosens": true }""";
    private const string Bands = """
        { "id": "permitted-drop-edition-4", "max": 3, "unit": "mbar", "volumeUpToM3": 0.01, "fuels": ["naturalGas"] },
        { "id": "permitted-drop-edition-4", "max": 1.5, "unit": "mbar", "volumeAboveM3": 0.01, "volumeUpToM3": 0.02, "fuels": ["naturalGas"] }
        """;

    public static TheoryData<string, string> Refused => new()
    {
        { """{ "id": "cold-fil", "max": 1, "unit": "bar" }""", "has an id that no shipped limit has" },
        { """{ "id": "cold-fill", "min": 1100, "max": 1500, "unit": "mbar" }""", "is in mbar; the limit is in bar" },
        { """{ "id": "cold-fill", "min": 0.7, "max": 1.5, "unit": "bar" }""", "does not say \"loosens\": true" },
        { """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar", "loosens": true }""", "says that it loosens, and does not" },
        { """{ "id": "cold-fill", "max": 1.5, "unit": "bar" }""", "must state min and max where the shipped limit does" },
        { """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar", "origin": "standard" }""", "must say \"origin\": \"deployer\"" },
        { """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar", "why": " " }""", "must say who set it, why" },
        { """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar", "volumeUpToM3": 1 }""", "does not depend on" },
        { """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar", "ceiling": true }""", "which only the shipped limit says" },
        { """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar", "whoo": "x" }""", "whoo" },
        { """{ "id": "co-co2-ratio-ceiling", "max": 0.009, "unit": "1", "loosens": true }""", "loosens a ceiling" },
        { """{ "id": "air-inlet-co2", "max": 0.2, "unit": "%", "loosens": true }""", "loosens a ceiling" },
        { """{ "id": "reportable-days", "max": 15, "unit": "d", "loosens": true }""", "loosens a limit of law" },
        { """{ "id": "airtight-home", "max": 4, "unit": "m3/(h.m2)" }""", "does not say \"loosens\": true" },
        { """{ "id": "domestic-scope-input", "max": 60, "unit": "kW" }""", "cannot be replaced" },
        { """{ "id": "let-by-pressure", "min": 8, "max": 9, "unit": "mbar", "fuels": ["butane"] }""", "where the shipped limit does not exist" },
        { """{ "id": "cold-fill", "min": 1.1, "max": 1.5, "unit": "bar" }, { "id": "cold-fill", "min": 1.2, "max": 1.5, "unit": "bar" }""", "an overlap: 2 lines apply" },
        { """{ "id": "permitted-drop-edition-4", "max": 3, "unit": "mbar" }""", "must say for which installation volume" },
        { """{ "id": "permitted-drop-edition-4", "max": 0.3, "unit": "kPa", "volumeUpToM3": 0.01 }""", "in mbar" },
        { """{ "id": "permitted-drop-edition-4", "max": 3, "unit": "mbar", "volumeUpToM3": 0.01 }, { "id": "permitted-drop-edition-4", "max": 2, "unit": "mbar", "volumeAboveM3": 0.012 }""", "with a gap or an overlap in it" },
        { """{ "id": "permitted-drop-edition-4", "max": 3, "unit": "mbar", "volumeUpToM3": 0.01 }, { "id": "permitted-drop-edition-4", "max": 2, "unit": "mbar", "volumeAboveM3": 0.008 }""", "with a gap or an overlap in it" },
        { """{ "id": "permitted-drop-edition-4", "max": 3, "unit": "mbar", "volumeAboveM3": 0.001 }""", "with a gap or an overlap in it" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_does_not_fit_is_refused_at_start(string lines, string because) =>
        Assert.Contains(Assert.Throws<CatalogueException>(() => Engine(lines)).Gaps, gap => gap.Contains(because, StringComparison.Ordinal));

    [Fact]
    public void Every_fault_is_named_at_once()
    {
        var refusal = Assert.Throws<CatalogueException>(() => Engine("""{ "id": "no-such", "max": 1, "unit": "1" }, { "id": "hot-pressure", "max": 2.6, "unit": "bar" }, { "max": "x" }"""));
        Assert.Collection(refusal.Gaps,
            gap => Assert.StartsWith("override 1 ('no-such')", gap, StringComparison.Ordinal),
            gap => Assert.StartsWith("override 2 ('hot-pressure')", gap, StringComparison.Ordinal),
            gap => Assert.Equal("override 3 does not say 'id'", gap),
            gap => Assert.Equal("override 3 does not say 'unit'", gap),
            gap => Assert.StartsWith("override 3 says 'max' in a form", gap, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("no JSON")]
    [InlineData("null")]
    public void A_file_that_holds_no_list_is_refused(string json) =>
        Assert.Throws<CatalogueException>(() => RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, Encoding.UTF8.GetBytes(json)));

    [Fact]
    public void A_file_that_is_not_there_is_refused() => Assert.Throws<CatalogueException>(() => Overrides.ReadFile("no-such-overrides.json"));

    [Fact]
    public void A_tighter_limit_decides_and_names_the_deployers_source()
    {
        var finding = Answer(Engine(Tighter), RuleIds.ColdFillPressure, json => json["water"]!["coldFillBar"] = 1.0);

        Assert.Equal(Outcome.Advisory, finding.Outcome);
        Assert.Equal((LimitOrigin.Deployer, "house rule 7"), (finding.Limit!.Origin, finding.Limit.Source));
        Assert.Null(finding.Loosened);
    }

    [Fact]
    public void A_loosened_limit_is_shown_wherever_it_was_read()
    {
        var engine = Engine(Looser);
        var record = Samples.Changed(json => json["water"]!["coldFillBar"] = 0.8);
        var shown = Assert.Single(engine.Evaluate(record).Show(Include.Passes).Findings, finding => finding.RuleId == RuleIds.ColdFillPressure);

        Assert.Equal((Outcome.Pass, true), (shown.Outcome, shown.Loosened));
        Assert.Equal(LimitOrigin.Deployer, shown.Limit!.Origin);
        Assert.Contains("loosened by the deployer: made up for a test (the office)", shown.Limit.Text, StringComparison.Ordinal);
        Assert.Contains("the deployer has loosened: cold fill pressure", shown.Message, StringComparison.Ordinal);
        Assert.Equal(Outcome.Advisory, Assert.Single(Samples.Engine.Evaluate(record).Findings, finding => finding.RuleId == RuleIds.ColdFillPressure).Outcome);
    }

    [Fact]
    public void A_loosened_limit_shows_in_a_verdict_that_has_another_limit_of_its_own()
    {
        // The vessel's size is worked out from the usual margin below the relief valve.
        var finding = Answer(Engine("""{ "id": "relief-margin", "what": "distance below the relief setting", "min": 5, "unit": "%", "loosens": true }"""), RuleIds.VesselVolume, _ => { });

        Assert.True(finding.Loosened);
        Assert.Contains("the deployer has loosened: distance below the relief setting", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_over_findings_that_falls_silent_by_a_loosened_limit_says_so()
    {
        var record = Samples.Changed(json =>
        {
            json["combustion"]!["readings"]![0]!["coPpm"] = 400;
            json["combustion"]!["zeroedOutdoors"] = false;
            json["combustion"]!["settledMinutes"] = 2;
            json["flue"]!["supportsOk"] = false;
        });
        var engine = Engine("""{ "id": "advisories-together", "max": 4, "maxExcluded": true, "unit": "1", "loosens": true }""");

        Assert.Equal(Outcome.Advisory, Assert.Single(Samples.Engine.Evaluate(record).Findings, finding => finding.RuleId == RuleIds.AdvisoriesTogether).Outcome);
        Assert.Equal(RuleIds.AdvisoriesTogether, Assert.Single(engine.Evaluate(record).Findings, finding => finding.Loosened == true).RuleId);
    }

    [Fact]
    public void Overrides_are_part_of_the_law_and_not_of_the_program()
    {
        var hashes = new[] { Samples.Catalogue, Engine(Tighter).Catalogue, Engine(Looser).Catalogue }.Select(catalogue => catalogue.Info).ToList();
        Assert.Equal(3, hashes.Select(info => info.LawHash).Distinct(StringComparer.Ordinal).Count());
        Assert.Single(hashes.Select(info => info.CodeHash).Distinct(StringComparer.Ordinal));
        Assert.Equal(Engine(Tighter).Catalogue.Info.LawHash, Engine(Tighter).Catalogue.Info.LawHash);
    }

    [Fact]
    public void No_band_of_edition_4_is_shipped() =>
        Assert.DoesNotContain(Samples.Catalogue.Limits.Definitions, line => line.IsBand || line.Id.Contains("edition-4", StringComparison.Ordinal));

    [Theory]
    [InlineData(0.01, 3, 0, Outcome.Pass)] // a volume belongs to the band that ends with it
    [InlineData(0.01, 3.1, 0, Outcome.Unsafe)]
    [InlineData(0.011, 1.5, 0, Outcome.Pass)]
    [InlineData(0.011, 1.6, 0, Outcome.Unsafe)]
    [InlineData(0.011, 1.5, null, Outcome.Missing)]
    [InlineData(0.021, 0.5, 0, Outcome.Missing)]
    [InlineData(null, 0.5, 0, Outcome.Missing)]
    [InlineData(0.01, 0.2, null, Outcome.Pass)] // no perceptible movement needs no table
    public void A_drop_is_judged_by_the_deployers_bands_of_edition_4(double? volume, double drop, int? alone, Outcome expected)
    {
        var finding = Answer(Engine(Bands), RuleIds.TightnessResult, json =>
        {
            var test = json["tightnessTests"]![0]!;
            test["edition"] = "4";
            test["dropMbar"] = (decimal)drop;
            test["permittedDropMbar"] = 8;
            test["permittedDropSource"] = "typed by the engineer";
            test["pipeworkOnlyMovementMbar"] = alone;
            test["installationVolumeM3"] = (decimal?)volume;
        });

        Assert.Equal(expected, finding.Outcome);
        if (finding.Limit is { Origin: LimitOrigin.Deployer } limit)
            Assert.Equal("house rule 7", limit.Source);
        else
            Assert.NotEqual(Outcome.Unsafe, finding.Outcome);
    }

    [Fact]
    public void Without_bands_the_stated_figure_is_judged_and_never_better_than_an_advisory()
    {
        var finding = Answer(Samples.Engine, RuleIds.TightnessResult, json =>
        {
            var test = json["tightnessTests"]![0]!;
            test["edition"] = "4";
            test["dropMbar"] = 0.5;
            test["permittedDropMbar"] = 1;
            test["permittedDropSource"] = "typed by the engineer";
            test["pipeworkOnlyMovementMbar"] = 0;
        });
        Assert.Equal((Outcome.Advisory, LimitOrigin.Standard), (finding.Outcome, finding.Limit!.Origin));
    }

    [Theory]
    [InlineData("4", 0.01, 3.0)]
    [InlineData("4", 0.011, 1.5)]
    [InlineData(null, 0.011, 1.5)] // tested when Edition 4 alone was in force
    [InlineData("4", 0.021, null)]
    [InlineData("4", null, null)]
    public void The_figure_of_the_permitted_drop_is_the_deployers_band_that_judges(string? edition, double? volume, double? expected)
    {
        var figures = Engine(Bands).Evaluate(Samples.Changed(json =>
        {
            var test = json["tightnessTests"]![0]!;
            (test["edition"], test["testedOn"], test["installationVolumeM3"]) = (edition, "2026-10-02", (decimal?)volume);
            json["startedAt"] = "2026-10-02T09:00:00+01:00";
            json["finishedAt"] = "2026-10-02T11:00:00+01:00";
        })).Figures.Where(figure => figure.Name == "permittedDrop").ToList();

        Assert.Equal((decimal?)expected, figures.SingleOrDefault()?.Value);
        Assert.All(figures, figure => Assert.Equal("house rule 7", figure.Source));
        Assert.All(figures, figure => Assert.Contains("/tightnessTests/0/installationVolumeM3", figure.Inputs));
    }

    [Fact]
    public void A_pipework_test_has_no_permitted_drop() => Assert.DoesNotContain(
        Engine(Bands).Evaluate(Samples.Changed(json => json["tightnessTests"]![0]!["appliancesConnected"] = false)).Figures,
        figure => figure.Name == "permittedDrop");

    [Fact]
    public void A_loosened_limit_that_only_a_figure_reads_is_not_laid_to_the_rule_that_asks_for_the_figures_first()
    {
        var engine = Engine("""{ "id": "relief-margin", "what": "distance below the relief setting", "min": 5, "unit": "%", "loosens": true }""");
        var record = Samples.Changed(json => json["instruments"]![0]!["accuracies"] = JsonNode.Parse(
            """[{ "quantity": "coPpm", "absolute": 10 }, { "quantity": "co2Percent", "absolute": 0.3 }]"""));
        var findings = engine.Evaluate(record).Findings;

        Assert.Contains(findings, finding => finding.RuleId == RuleIds.CombustionRatio && finding.Conformity is not null);
        Assert.Equal(
            [RuleIds.ReliefMargin, RuleIds.VesselVolume],
            findings.Where(finding => finding.Loosened == true).Select(finding => finding.RuleId).Order(StringComparer.Ordinal));
    }

    private static Finding Answer(ComplianceEngine engine, string ruleId, Action<JsonNode> change) =>
        engine.Evaluate(Samples.Changed(change)).Findings.First(finding => finding.RuleId == ruleId);

    /// <summary>The rule set with these overrides, each made whole with what an override must say besides.</summary>
    private static ComplianceEngine Engine(string lines)
    {
        var overrides = JsonNode.Parse($"[{lines}]")!.AsArray();
        foreach (var line in overrides.OfType<JsonObject>())
        {
            foreach (var (name, value) in Usual)
                line.TryAdd(name, value!.DeepClone());
        }

        return ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, Encoding.UTF8.GetBytes(overrides.ToJsonString())));
    }

    private static JsonObject Usual { get; } = new()
    {
        ["what"] = "cold fill pressure",
        ["resolution"] = 0.1,
        ["origin"] = "deployer",
        ["source"] = "house rule 7",
        ["verified"] = true,
        ["who"] = "the office",
        ["why"] = "made up for a test",
    };
}
