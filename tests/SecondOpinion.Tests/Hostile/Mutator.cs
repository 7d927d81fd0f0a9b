using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using SecondOpinion.Tests.Records;

namespace SecondOpinion.Tests.Hostile;

/// <summary>Spoils records: their members, their numbers and days, and their bytes. The same number always spoils in the same way.</summary>
internal static class Mutator
{
    private const string Mark = "@@raw@@";

    /// <summary>Raw JSON that may come to stand in place of any value: right for some members, wrong for most, and no JSON at all.</summary>
    private static readonly string[] Values =
    [
        "null", "true", "false", "0", "-0", "1", "-1", "0.0001", "1e-28", "1e-29", "1e-40", "1e28", "1e29", "1e400", "0e99999", "79228162514264337593543950335",
        "79228162514264337593543950336", "9.2000000000000000000000000000", "NaN", "01", "\"\"", "\" \"", "\"x\"", "\"0\"", "\"true\"", "\"other\"", "\"none\"",
        "\"naturalGas\"", "\"naturalGas, propane\"", "\"PROPANE\"", "\"butane\"", "\"beforeWork\"", "\"afterWork\"", "\"GB-SCT\"", "\"rented\"",
        "\"2026-09-14\"", "\"2026-02-30\"", "\"1900-01-01\"", "\"2200-12-31\"", "\"2026-10-25T01:30:00+01:00\"", "\"2026-09-14T10:25:00\"", "\"2026-09-14T23:59:60Z\"",
        "\"1900-01-01T00:00:00+14:00\"", "\"2200-12-31T23:59:59-14:00\"", "\"\\u0000\"", "\"\\ud800\"", "\"=1+1\"", "\"<b>\"", "{}", "[]", "[null]", "[{}]", "[[]]", "[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]",
    ];

    private static readonly byte[] Bytes = [.. "{}[]\",:0-9.eE+ntf\\u \n"u8, 0, 9, 0x1B, 0x80, 0xC3, 0xED, 0xFF];

    /// <summary>The record with one to four spoilings.</summary>
    public static byte[] Spoil(JsonObject record, Dice dice)
    {
        var text = record.ToJsonString();
        for (var left = dice.UpTo(4); left >= 0; left--)
            text = SpoilMember(text, dice);
        var bytes = Encoding.UTF8.GetBytes(text);
        return dice.Chance(0.2) ? SpoilByte(bytes, dice) : bytes;
    }

    private static string SpoilMember(string text, Dice dice)
    {
        if (Parsed(text) is not { } root || Places(root).ToList() is not { Count: > 0 } places)
            return text;

        var (parent, key) = dice.OneOf(places);
        var value = dice.UpTo(8) switch
        {
            0 => null,
            1 => Raw(dice.OneOf(Values)),
            2 => Twin(dice.OneOf(places)),
            3 or 4 or 5 => Bent(Twin((parent, key)), dice),
            6 => new JsonArray(Twin((parent, key)), Twin((parent, key))),
            _ => Twin((parent, key)),
        };
        switch (parent, key)
        {
            case (JsonObject members, string name) when value is null:
                members.Remove(name);
                break;
            case (JsonObject members, string name) when dice.Chance(0.05):
                members[dice.Chance(0.5) ? name.ToUpperInvariant() : Mark + name] = value;
                break;
            case (JsonObject members, string name):
                members[name] = value;
                break;
            case (JsonArray items, int index) when value is null:
                items.RemoveAt(index);
                break;
            case (JsonArray items, int index) when dice.Chance(0.5):
                items.Insert(index, value);
                break;
            case (JsonArray items, int index):
                items[index] = value;
                break;
        }

        return Unmarked(root.ToJsonString());
    }

    /// <summary>A number a little or a lot different, a day moved, a yes turned.</summary>
    private static JsonNode? Bent(JsonNode? node, Dice dice) => node is not JsonValue value ? node
        : value.TryGetValue<bool>(out var yes) ? !yes
        : value.TryGetValue<decimal>(out var number) ? Raw(Number(number, dice))
        : value.TryGetValue<string>(out var text) && text.Length >= 10 && DateOnly.TryParseExact(text[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is > 1910 and < 2190
            ? day.AddDays(dice.OneOf<int>([-400, -366, -28, -1, 1, 29, 365, 3000])).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + text[10..]
        : node;

    private static string Number(decimal number, Dice dice)
    {
        // Near the end of what a decimal holds there is no room to bend.
        var bent = Math.Abs(number) > 1e27m ? number : dice.UpTo(7) switch
        {
            0 => number * 10,
            1 => number / 10,
            2 => -number,
            3 => number + 0.0001m,
            4 => number - 0.1m,
            5 => number * 1.05m,
            _ => number + 1,
        };
        return bent.ToString(CultureInfo.InvariantCulture) + (dice.Chance(0.1) ? dice.OneOf<string>(["e0", "e1", "E-2", "0000"]) : "");
    }

    private static byte[] SpoilByte(byte[] bytes, Dice dice)
    {
        var at = dice.UpTo(bytes.Length);
        return dice.UpTo(4) switch
        {
            0 => [.. bytes[..at], .. bytes[(at + 1)..]],
            1 => [.. bytes[..at], dice.OneOf(Bytes), .. bytes[at..]],
            2 => bytes[..at],
            _ => [.. bytes[..at], dice.OneOf(Bytes), .. bytes[(at + 1)..]],
        };
    }

    private static JsonValue Raw(string json) => JsonValue.Create(Mark + json);

    private static JsonNode? Twin((JsonNode Parent, object Key) place) => (place.Key is int index ? place.Parent[index] : place.Parent[(string)place.Key])?.DeepClone();

    /// <summary>What was marked stands there as it is, quotes and all; a marked name becomes one that may be there twice.</summary>
    private static string Unmarked(string json)
    {
        for (var at = json.IndexOf('"' + Mark, StringComparison.Ordinal); at >= 0; at = json.IndexOf('"' + Mark, at, StringComparison.Ordinal))
        {
            var end = json.IndexOf('"', at + 1);
            while (json[end - 1] == '\\')
                end = json.IndexOf('"', end + 1);
            var inside = json[(at + 1 + Mark.Length)..end];
            var isName = end + 1 < json.Length && json[end + 1] == ':';
            json = json[..at] + (isName ? $"\"{inside}\"" : JsonNode.Parse($"\"{inside}\"")!.GetValue<string>()) + json[(end + 1)..];
        }

        return json;
    }

    /// <summary>Null for what an earlier spoiling left without one meaning; it stays as it is.</summary>
    private static JsonNode? Parsed(string text)
    {
        try
        {
            return text.Contains("\\ud800", StringComparison.Ordinal) ? null : JsonNode.Parse(text, documentOptions: new() { AllowDuplicateProperties = false });
        }
        catch (System.Text.Json.JsonException)
        {
            return null;
        }
    }

    /// <summary>Every value of a record: where it stands, and its name or number there.</summary>
    public static IEnumerable<(JsonNode Parent, object Key)> Places(JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(member => Places(member.Value).Prepend((members, member.Key))),
        JsonArray items => items.Index().SelectMany(item => Places(item.Item).Prepend((items, item.Index))),
        _ => [],
    };
}
