using System.Text;
using System.Text.Json.Nodes;
using Findings;
using Records;

namespace Rules.Tests;

/// <summary>The example record, changed, and what the service works out from it.</summary>
internal static class FigureRecords
{
    /// <summary>Invented accuracies of an analyser, as a data sheet states them.</summary>
    public const string AnalyserAccuracies =
        """
        [{"quantity":"coPpm","absolute":10,"relativePercent":5,"resolution":1},
         {"quantity":"co2Percent","absolute":0.3,"resolution":0.1},
         {"quantity":"o2Percent","absolute":0.2,"resolution":0.1},
         {"quantity":"flueTemperatureC","absolute":2,"resolution":1},
         {"quantity":"airTemperatureC","absolute":1,"resolution":1}]
        """;

    public static ServiceRecord Example(params (string Pointer, string Json)[] changes) => RuleSet.Read(JsonOf(changes));

    public static byte[] JsonOf(params (string Pointer, string Json)[] changes)
    {
        var record = JsonNode.Parse(RuleSet.Catalogue.ExampleRecord)!;
        foreach (var (pointer, json) in changes)
        {
            var parts = pointer.Split('/')[1..];
            var parent = parts[..^1].Aggregate(record, (at, part) => at is JsonArray list ? list[int.Parse(part, null)]! : at[part] ??= new JsonObject());
            parent[parts[^1]] = json.Length == 0 ? null : JsonNode.Parse(json);
        }

        return Encoding.UTF8.GetBytes(record.ToJsonString());
    }

    public static IReadOnlyList<Figure> FiguresOf(ServiceRecord record) => RuleSet.Engine.VisitOf(record).Figures;

    public static Figure Only(this IReadOnlyList<Figure> figures, string name, string? subject = null) =>
        Assert.Single(figures, figure => figure.Name == name && (subject is null || figure.Subject == subject));
}
