using System.Text.Json;
using Findings;
using Kernel.Catalogues;

namespace Kernel.Tests;

public sealed class LimitKnowledgeTests
{
    [Fact]
    public void Facts_are_counted_and_what_was_read_of_them()
    {
        var known = new LimitKnowledge(
            [
                Line("a", "fact", "law", """ "document": "An Act", "readOn": "2026-12-01" """), Line("b", "fact", "memory", """ "document": "A standard" """),
                Line("c", "fact", "taught", """ "document": "A standard" """), Line("d", "fact", "memory"), Line("e", "derived", "derived", """ "inputs": "law" """), Line("f", "judgement", "judgement"),
            ],
            []);

        Assert.Equal((6, 4, 1), (known.All, known.Facts, known.FactsRead));
        Assert.Equal(
            [(LimitStrength.Law, 1), (LimitStrength.Taught, 1), (LimitStrength.Memory, 2), (LimitStrength.Derived, 1), (LimitStrength.Judgement, 1)],
            known.ByStrength.Where(of => of.Lines > 0).Select(of => (of.Strength, of.Lines)));
        Assert.Equal([("A standard", 2, 0), ("An Act", 1, 1)], known.ByDocument.Select(of => (of.Of, of.Facts, of.Read)));
        Assert.Equal([("A standard", 2)], known.ToConfirm.Select(of => (of.Of, of.Unread)));
    }

    /// <summary>Of what is shipped: every line has its place, every fact that a rule reads its area, and more than half of the facts were read.</summary>
    [Fact]
    public void Of_what_is_shipped_nothing_is_left_out()
    {
        var (known, lines) = (Samples.Catalogue.Known, Samples.Catalogue.Limits.Definitions);

        Assert.Equal(lines.Count, known.ByStrength.Sum(of => of.Lines));
        Assert.Equal(lines.Count(line => line.Kind == LimitKind.Fact && line.Verified), known.FactsRead);
        Assert.Equal(lines.Count(line => line is { Kind: LimitKind.Fact, Document: not null }), known.ByDocument.Sum(of => of.Facts));
        Assert.True(known.ByTopic.Sum(of => of.Facts) >= known.Facts);
        Assert.InRange((double)known.FactsRead / known.Facts, 0.5, 1);
    }

    private static LimitDefinition Line(string id, string kind, string strength, string more = """ "ceiling": null """) => JsonSerializer.Deserialize<LimitDefinition>(
        $$"""{ "id": "{{id}}", "what": "made up", "unit": "mbar", "resolution": 1, "max": 1, "origin": "standard", "source": "made up", "kind": "{{kind}}", "strength": "{{strength}}", {{more}} }""",
        CatalogueJson.Options)!;
}
