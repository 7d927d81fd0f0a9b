using System.Globalization;
using System.Text.Json.Nodes;

namespace SecondOpinion.Tests.Records;

/// <summary>The days in a record.</summary>
internal static class Days
{
    /// <summary>Moves every date and date-time below a node.</summary>
    public static void Move(JsonNode? node, int days)
    {
        switch (node)
        {
            case JsonObject members:
                foreach (var (name, value) in members.ToList())
                {
                    if (value is JsonValue text && Shifted(text, days) is { } shifted)
                        members[name] = shifted;
                    else
                        Move(value, days);
                }

                break;
            case JsonArray items:
                foreach (var item in items)
                    Move(item, days);
                break;
        }
    }

    private static string? Shifted(JsonValue value, int days) =>
        value.TryGetValue<string>(out var text) && text.Length >= 10
        && DateOnly.TryParseExact(text[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? FormattableString.Invariant($"{day.AddDays(days):yyyy-MM-dd}") + text[10..]
            : null;
}
