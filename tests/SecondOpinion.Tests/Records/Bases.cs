using System.Text.Json.Nodes;

namespace SecondOpinion.Tests.Records;

/// <summary>
/// The records that changes start from: the example, and variants of it (bases.json, and bases-paper.json for dates, papers and defects), each
/// with members set or (null) removed. Upon any of them may come what was done and how it ended (works.json).
/// </summary>
internal static class Bases
{
    private static readonly List<JsonObject> Variants =
        [.. new[] { "bases.json", "bases-paper.json" }.SelectMany(Read)];

    private static readonly List<JsonObject> Works = [.. Read("works.json")];

    public static int Count => Variants.Count;

    /// <summary>A fresh draft of a variant.</summary>
    public static Draft Draft(int number)
    {
        var draft = new Draft();
        Apply(Variants[number], draft);
        return draft;
    }

    /// <summary>Lays some work and its result upon a draft.</summary>
    public static void LayWorkUpon(Draft draft, Dice dice) => Apply(dice.OneOf(Works), draft);

    private static IEnumerable<JsonObject> Read(string file) =>
        JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, file)))!.AsArray().Select(variant => variant!.AsObject());

    private static void Apply(JsonObject variant, Draft draft)
    {
        if (variant["from"] is { } other)
            Apply(Variants.Single(one => JsonNode.DeepEquals(one["name"], other)), draft);
        foreach (var (pointer, value) in variant["set"]?.AsObject() ?? [])
            draft.Apply(pointer, value);
    }
}
