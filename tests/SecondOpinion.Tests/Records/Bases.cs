using System.Text.Json.Nodes;

namespace SecondOpinion.Tests;

/// <summary>The records that changes start from: the example, and variants of it (bases.json), each with members set or (null) removed.</summary>
internal static class Bases
{
    private static readonly JsonNode Example = Parse("example-record.json");

    private static readonly List<JsonObject> Variants = [.. Parse("bases.json").AsArray().Select(variant => variant!.AsObject())];

    public static int Count => Variants.Count;

    /// <summary>A fresh draft of a variant.</summary>
    public static Draft Draft(int number)
    {
        var draft = new Draft(Example.DeepClone());
        draft.Note($"{Variants[number]["name"]}:");
        Apply(Variants[number], draft);
        return draft;
    }

    private static void Apply(JsonObject variant, Draft draft)
    {
        if (variant["from"] is { } other)
            Apply(Variants.Single(one => JsonNode.DeepEquals(one["name"], other)), draft);
        foreach (var (pointer, value) in variant["set"]?.AsObject() ?? [])
            draft.Change(pointer, value?.DeepClone());
    }

    private static JsonNode Parse(string file) => JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, file)))!;
}
