using System.Globalization;
using System.Text.Json.Nodes;

namespace Api.Tests.Operations;

/// <summary>What records say that is nobody else's business: each text of their own, and each number that is not a plain one.</summary>
internal static class Said
{
    private const int ShortestTelling = 4;

    /// <summary>The texts, apart from the names of values, which say nothing of anyone.</summary>
    public static IReadOnlyCollection<string> ByRecords(IEnumerable<byte[]> records) =>
        [.. records.SelectMany(record => Leaves(JsonNode.Parse(record))).ToHashSet(StringComparer.Ordinal)];

    private static IEnumerable<string> Leaves(JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(member => Leaves(member.Value)),
        JsonArray items => items.SelectMany(Leaves),
        JsonValue value when value.TryGetValue<string>(out var text) => IsOwn(text) ? [text] : [],
        JsonValue value when value.TryGetValue<decimal>(out var number) && number.Scale > 0 && value.ToJsonString() is { Length: > ShortestTelling } text => [text],
        _ => [],
    };

    /// <summary>A value's name is one word without digits; days tell nothing on their own.</summary>
    private static bool IsOwn(string text) => text.Length >= ShortestTelling && (text.Any(char.IsAsciiDigit) || text.Contains(' ', StringComparison.Ordinal)) && !DateOnly.TryParse(text, CultureInfo.InvariantCulture, out _) && text != "GB-ENG";
}
