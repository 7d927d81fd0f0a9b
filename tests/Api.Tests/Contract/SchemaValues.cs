using System.Globalization;
using System.Text.Json.Nodes;

namespace Api.Tests.Contract;

/// <summary>
/// Makes values from a schema of the document and nothing else: such as it allows (plain ones and ones on its bounds), and such as it
/// forbids. The same seed gives the same values.
/// </summary>
internal sealed class SchemaValues(JsonNode document, Random random)
{
    private static readonly string[] PlainTexts = ["x", "A-1", "naïve café", "W 018", "𝔘nicode 😀", "<script>", "'; --", "../..", "0"];

    /// <summary>Members that are bound by each other or by what is stored, which no schema says: seldom given, so that most of what the schema allows is accepted.</summary>
    private static readonly HashSet<string> Seldom = new(StringComparer.Ordinal)
    {
        "supersedes", "supersedesBecause", "profileId", "subject", "startedAt", "previousVisit", "installedOn", "volumeFt3", "calibrationDueOn", "reportedOn", "co2PercentMin",
    };

    /// <summary>Members that must be given beside others, which no schema says: given as a rule.</summary>
    private static readonly HashSet<string> Often = new(StringComparer.Ordinal) { "fuel" };

    /// <summary>A value that the schema allows.</summary>
    public JsonNode Allowed(JsonNode schema, int depth = 0)
    {
        schema = Resolve(schema);
        if (schema["enum"] is JsonArray values)
            return values[random.Next(values.Count)]!.DeepClone();

        return schema["type"]!.GetValue<string>() switch
        {
            "object" => AllowedObject(schema, depth),
            "array" => AllowedList(schema, depth),
            "string" => JsonValue.Create(AllowedText(schema)),
            "number" => JsonValue.Create(AllowedNumber(schema)),
            "integer" => JsonValue.Create((long)decimal.Truncate(AllowedNumber(schema))),
            "boolean" => JsonValue.Create(random.Next(2) == 0),
            var other => throw new NotSupportedException(other),
        };
    }

    /// <summary>The value with one thing in it that the schema forbids; null when this value offers no place for one.</summary>
    public JsonNode? Forbidden(JsonNode schema, JsonNode allowed)
    {
        var places = Places(Resolve(schema), allowed).ToList();
        var (place, key, of) = places[random.Next(places.Count)];
        var wrong = Wrong(Resolve(of));
        if (place is null)
            return wrong;
        if (place is JsonObject owner && random.Next(6) == 0 && Resolve(of)["type"]?.GetValue<string>() is not "object")
            owner[key + "X"] = 1;
        else if (place is JsonObject members)
            members[key] = wrong;
        else
            place.AsArray()[int.Parse(key, CultureInfo.InvariantCulture)] = wrong;
        return allowed;
    }

    private JsonNode Resolve(JsonNode schema) => schema["$ref"] is { } reference
        ? document["components"]!["schemas"]![reference.GetValue<string>().Split('/')[^1]]!
        : schema;

    private JsonObject AllowedObject(JsonNode schema, int depth)
    {
        var required = schema["required"]?.AsArray().Select(name => name!.GetValue<string>()).ToHashSet(StringComparer.Ordinal) ?? [];
        var made = new JsonObject();
        foreach (var (name, member) in schema["properties"]!.AsObject())
        {
            if (required.Contains(name) || (Often.Contains(name) && random.Next(20) > 0) || random.Next(Seldom.Contains(name) ? 50 : depth == 0 ? 5 : 3) == 0)
                made[name] = Allowed(member!, depth + 1);
        }

        return made;
    }

    private JsonArray AllowedList(JsonNode schema, int depth)
    {
        var most = schema["maxItems"]!.GetValue<int>();
        var least = schema["minItems"]?.GetValue<int>() ?? 0;
        var count = random.Next(40) == 0 && most <= 100 ? most : Math.Max(least, random.Next(Math.Min(most, 3) + 1));
        return [.. Enumerable.Range(0, count).Select(_ => Allowed(schema["items"]!, depth + 1))];
    }

    private string AllowedText(JsonNode schema)
    {
        switch (schema["format"]?.GetValue<string>())
        {
            case "date":
                return Pick("1900-01-01", "2200-12-31", "2024-02-29", Day());
            case "date-time":
                return Pick("1900-01-01T00:00:00Z", "2200-12-31T23:59:59+14:00", "2026-09-14t10:25:00z", $"{Day()}T10:25:00+01:00", $"{Day()}T23:59:59.123456789-05:30");
            default:
                var most = schema["maxLength"]!.GetValue<int>();
                var least = schema["minLength"]?.GetValue<int>() ?? 0;
                return random.Next(12) switch
                {
                    0 when most <= 1000 => string.Concat(Enumerable.Repeat("😀", most)),
                    1 when most <= 1000 => new string('z', most),
                    2 when least == 0 => "",
                    _ => Pick(PlainTexts) is var text && text.Length <= most ? text : text[..most],
                };
        }
    }

    private string Day() => new DateOnly(2026, 1, 1).AddDays(random.Next(-700, 700)).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private decimal AllowedNumber(JsonNode schema)
    {
        var least = schema["minimum"]?.GetValue<decimal>() ?? -1000m;
        var most = schema["maximum"]?.GetValue<decimal>() ?? 1000m;
        return random.Next(8) switch
        {
            0 => least,
            1 => most,
            2 => least <= 0 && most >= 0 ? 0m : least,
            _ => decimal.Round(least + ((most - least) * random.Next(10_001) / 10_000m), 6),
        };
    }

    private IEnumerable<(JsonNode? Place, string Key, JsonNode Schema)> Places(JsonNode schema, JsonNode value)
    {
        yield return (null, "", schema);
        foreach (var place in Inner(schema, value))
            yield return place;
    }

    private IEnumerable<(JsonNode? Place, string Key, JsonNode Schema)> Inner(JsonNode schema, JsonNode value)
    {
        schema = Resolve(schema);
        if (value is JsonObject members)
        {
            foreach (var (name, member) in members)
            {
                yield return (value, name, schema["properties"]![name]!);
                foreach (var place in Inner(schema["properties"]![name]!, member!))
                    yield return place;
            }
        }
        else if (value is JsonArray items)
        {
            for (var i = 0; i < items.Count; i++)
            {
                yield return (value, i.ToString(CultureInfo.InvariantCulture), schema["items"]!);
                foreach (var place in Inner(schema["items"]!, items[i]!))
                    yield return place;
            }
        }
    }

    /// <summary>A value that the schema forbids: of another type, none of its values, or one step outside of a bound.</summary>
    private JsonNode Wrong(JsonNode schema)
    {
        if (schema["enum"] is JsonArray values)
        {
            var known = values[random.Next(values.Count)]!.GetValue<string>();
            return Pick<JsonNode>(known.ToUpperInvariant() + "_", " " + known, $"{known}, {known}", "", 0, true);
        }

        switch (schema["type"]!.GetValue<string>())
        {
            case "object":
                return Pick<JsonNode>("text", 1, true, new JsonArray(), new JsonArray(new JsonObject()));
            case "array":
                var items = schema["items"]!;
                return random.Next(3) == 0 && schema["maxItems"]!.GetValue<int>() is <= 200 and var most
                    ? new JsonArray([.. Enumerable.Range(0, most + 1).Select(_ => Allowed(items, 9))])
                    : Pick<JsonNode>("text", 1, new JsonObject(), new JsonArray("\u0001", 1, new JsonArray()));
            case "number" or "integer":
                var bounds = new List<JsonNode> { "1", true, new JsonObject(), new JsonArray(1) };
                if (schema["maximum"]?.GetValue<decimal>() is { } highest)
                    bounds.Add(highest + 0.000001m);
                if (schema["minimum"]?.GetValue<decimal>() is { } lowest)
                    bounds.Add(lowest - 0.000001m);
                return Pick([.. bounds]);
            case "boolean":
                return Pick<JsonNode>("true", 0, 1, new JsonObject());
            default:
                var longest = schema["maxLength"]!.GetValue<int>();
                return schema["format"] is not null
                    ? Pick<JsonNode>("2026-02-30", "2026-9-14", "14/09/2026", "1899-12-31", "2026-09-14T10:25:00", "2026-09-14T10:25:00-00:00", "2026-09-14T24:00:00Z", 20260914)
                    : Pick<JsonNode>(new string('z', longest + 1), "a\u0000b", "\u001b[2J", 1, false, new JsonArray("x"));
        }
    }

    private T Pick<T>(params T[] of) => of[random.Next(of.Length)];
}
