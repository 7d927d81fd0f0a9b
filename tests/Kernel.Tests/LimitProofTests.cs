using System.Text.Json;
using Kernel.Catalogues;

namespace Kernel.Tests;

/// <summary>For each limit, each fuel, jurisdiction and day of its scope has exactly one answer. The books here are made up.</summary>
public sealed class LimitProofTests
{
    [Fact]
    public void The_shipped_book_is_whole() => Assert.Empty(LimitProof.Faults(Samples.Catalogue.Limits, Samples.Catalogue.Model.Fuels, Samples.Catalogue.JurisdictionCodes));

    [Fact]
    public void Lines_that_follow_each_other_without_a_day_between_are_whole() => Assert.Empty(Faults(
        Line("""{ "max": 1, "inForceTo": "2026-09-30" }"""), Line("""{ "max": 2, "inForceFrom": "2026-10-01" }""")));

    [Fact]
    public void A_limit_that_exists_for_one_fuel_only_is_whole() => Assert.Empty(Faults(Line("""{ "max": 1, "fuels": ["propane"] }""")));

    public static TheoryData<string, string[]> Broken => new()
    {
        { "a gap: no line applies for naturalGas in GB-ENG on 2026-10-01", ["""{ "max": 1, "inForceTo": "2026-09-30" }""", """{ "max": 2, "inForceFrom": "2026-10-02" }"""] },
        { "a gap: no line applies for butane in GB-SCT on 2027-01-01", ["""{ "max": 1, "inForceTo": "2026-12-31" }"""] },
        { "an overlap: 2 lines apply for naturalGas in GB-WLS on 2026-10-01", ["""{ "max": 1, "inForceTo": "2026-10-01" }""", """{ "max": 2, "inForceFrom": "2026-10-01" }"""] },
        { "a gap: no line applies for propane in GB-SCT", ["""{ "max": 1, "fuels": ["naturalGas"] }""", """{ "max": 2, "fuels": ["propane"], "jurisdictions": ["GB-ENG", "GB-WLS"] }"""] },
        { "an overlap: 2 lines apply for propane", ["""{ "max": 1, "fuels": ["naturalGas", "propane"] }""", """{ "max": 2, "fuels": ["propane", "butane"] }"""] },
        { "goes out of force before it comes into force", ["""{ "max": 1, "inForceFrom": "2026-10-02", "inForceTo": "2026-10-01" }"""] },
        { "applies to nothing", ["""{ "max": 1, "fuels": [] }"""] },
        { "has neither min nor max", ["{ }"] },
        { "has a min above its max", ["""{ "min": 2, "max": 1 }"""] },
        { "has a resolution that is no step", ["""{ "max": 1, "resolution": 0 }"""] },
        { "differ in unit", ["""{ "max": 1, "fuels": ["propane"] }""", """{ "max": 2, "unit": "bar", "fuels": ["naturalGas", "butane"] }"""] },
        { "is for overrides", ["""{ "max": 1, "who": "somebody" }"""] },
        { "only a deployer may fill", ["""{ "max": 1, "volumeUpToM3": 0.01 }"""] },
        { "does not say its kind and its strength", ["""{ "max": 1, "kind": null }"""] },
        { "does not say its kind and its strength", ["""{ "max": 1, "strength": null }"""] },
        { "says 'verified', which follows", ["""{ "max": 1, "verified": true }"""] },
        { "does not say in which document and on which day", ["""{ "max": 1, "strength": "law", "document": "an Act" }"""] },
        { "does not say in which document and on which day", ["""{ "max": 1, "strength": "publisher", "readOn": "2026-12-01" }"""] },
        { "says when it was read, and does not count as read", ["""{ "max": 1, "readOn": "2026-12-01" }"""] },
        { "a kind and a strength that do not agree", ["""{ "max": 1, "kind": "judgement" }"""] },
        { "a kind and a strength that do not agree", ["""{ "max": 1, "kind": "fact", "strength": "derived", "inputs": "law" }"""] },
        { "does not say how well its weakest input is known", ["""{ "max": 1, "kind": "derived", "strength": "derived" }"""] },
        { "does not say how well its weakest input is known", ["""{ "max": 1, "inputs": "law" }"""] },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_book_with_a_fault_is_refused_with_its_place(string fault, string[] lines) =>
        Assert.Contains(Faults([.. lines.Select(Line)]), found => found.Contains(fault, StringComparison.Ordinal));

    [Fact]
    public void Whoever_reads_a_limit_gets_the_line_of_the_day()
    {
        var book = new LimitBook([Line("""{ "max": 1, "inForceTo": "2026-09-30" }"""), Line("""{ "max": 2, "inForceFrom": "2026-10-01" }""")]);
        var days = new[] { new DateOnly(2026, 9, 29), new DateOnly(2026, 9, 30), new DateOnly(2026, 10, 1), new DateOnly(2026, 10, 2) };

        Assert.Equal([1m, 1m, 2m, 2m], days.Select(day => book.For("naturalGas", "GB-ENG", day)["x"].Max!.Value));
    }

    [Fact]
    public void Without_a_fuel_only_what_is_the_same_for_every_fuel_is_known()
    {
        var book = new LimitBook(
            [Line("""{ "max": 1 }"""), Line("""{ "id": "y", "max": 2, "fuels": ["propane"] }"""), Line("""{ "id": "z", "max": 3 }""")],
            [Line("""{ "id": "z", "max": 2, "fuels": ["propane"] }""")]);
        var sheet = book.For(null, "GB-ENG", new DateOnly(2026, 9, 29));

        Assert.Equal((1m, 1m), (sheet["x"].Max, sheet.Find("x")?.Max));
        Assert.Null(sheet.Find("w"));
        Assert.Equal(3m, book.For("butane", "GB-ENG", new DateOnly(2026, 9, 29))["z"].Max);
        foreach (var id in new[] { "y", "z" })
        {
            Assert.Throws<FuelNeededException>(() => sheet[id]);
            Assert.Throws<FuelNeededException>(() => sheet.Find(id));
            Assert.Throws<FuelNeededException>(() => sheet.HasTable(id));
            Assert.Throws<FuelNeededException>(() => sheet.ByVolume(id, 0.01m));
        }
    }

    /// <summary>Read is what law, a publisher or a bulletin gives; what is worked out is as well known as the weakest figure that goes into it.</summary>
    [Theory]
    [InlineData("law", null, true)]
    [InlineData("publisher", null, true)]
    [InlineData("bulletin", null, true)]
    [InlineData("taught", null, false)]
    [InlineData("secondary", null, false)]
    [InlineData("memory", null, false)]
    [InlineData("judgement", null, false)]
    [InlineData("derived", "publisher", true)]
    [InlineData("derived", "memory", false)]
    public void Whether_a_figure_was_read_follows_from_its_strength(string strength, string? inputs, bool verified)
    {
        var line = Line($$"""{ "max": 1, "strength": "{{strength}}", "inputs": {{(inputs is null ? "null" : $"\"{inputs}\"")}} }""");
        Assert.Equal((verified, verified), (line.Verified, line.AsLimit.Verified));
    }

    private static IReadOnlyList<string> Faults(params LimitDefinition[] lines) => [.. LimitProof.Faults(new LimitBook(lines), ["naturalGas", "propane", "butane"], ["GB-ENG", "GB-WLS", "GB-SCT"])];

    /// <summary>A line of the made-up limit x, in millibar, with what <paramref name="json"/> says of it.</summary>
    private static LimitDefinition Line(string json)
    {
        var line = System.Text.Json.Nodes.JsonNode.Parse("""{ "id": "x", "what": "made up", "unit": "mbar", "resolution": 1, "origin": "standard", "source": "made up", "kind": "fact", "strength": "memory" }""")!;
        foreach (var (name, value) in System.Text.Json.Nodes.JsonNode.Parse(json)!.AsObject())
            line[name] = value?.DeepClone();
        return line.Deserialize<LimitDefinition>(CatalogueJson.Options)!;
    }
}
