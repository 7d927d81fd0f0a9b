using System.Text.Json.Nodes;

namespace SecondOpinion.Tests;

/// <summary>The records that changes start from: the example, and variants of it (bases.json), each with members set or (null) removed.</summary>
internal static class Bases
{
    private static readonly List<JsonObject> Variants =
        [.. JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "bases.json")))!.AsArray().Select(variant => variant!.AsObject())];

    public static int Count => Variants.Count;

    /// <summary>A fresh draft of a variant.</summary>
    public static Draft Draft(int number)
    {
        var draft = new Draft();
        Apply(Variants[number], draft);
        return draft;
    }

    private static void Apply(JsonObject variant, Draft draft)
    {
        if (variant["from"] is { } other)
            Apply(Variants.Single(one => JsonNode.DeepEquals(one["name"], other)), draft);
        foreach (var (pointer, value) in variant["set"]?.AsObject() ?? [])
            draft.Apply(pointer, value);
    }
}
