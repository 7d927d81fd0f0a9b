using System.Globalization;
using System.Text.Json.Nodes;

namespace MadeVisits;

/// <summary>Places of a record in the making, by JSON Pointer such as <c>/combustion/readings/0/coPpm</c>. No name in a record needs escaping.</summary>
public static class JsonPlaces
{
    /// <summary>The node there; null where there is none.</summary>
    public static JsonNode? At(this JsonObject root, string pointer)
    {
        ArgumentNullException.ThrowIfNull(root);
        JsonNode? node = root;
        foreach (var part in Parts(pointer))
            node = node switch
            {
                JsonObject members => members[part],
                JsonArray items when IsIndex(part, out var index) && index < items.Count => items[index],
                _ => null,
            };
        return node;
    }

    /// <summary>Whether the member there is the given text.</summary>
    public static bool Is(this JsonObject root, string pointer, string text) => root.At(pointer) is JsonValue value && value.TryGetValue<string>(out var found) && found == text;

    /// <summary>Whether the member there is yes.</summary>
    public static bool IsTrue(this JsonObject root, string pointer) => root.At(pointer) is JsonValue value && value.TryGetValue<bool>(out var found) && found;

    /// <summary>Sets a member, or the item of a list, with the sections and lists on the way; <c>-</c> and the index behind the last append. A null value removes.</summary>
    /// <exception cref="ArgumentException">A list on the way is too short.</exception>
    public static JsonObject Put(this JsonObject root, string pointer, JsonNode? value)
    {
        ArgumentNullException.ThrowIfNull(root);
        if (value is null)
            return root.Drop(pointer);
        var parts = Parts(pointer);
        JsonNode node = root;
        for (var at = 0; at < parts.Length - 1; at++)
            node = Child(node, parts[at]) ?? Place(node, parts[at], IsIndex(parts[at + 1], out _) || parts[at + 1] == "-" ? new JsonArray() : new JsonObject(), pointer);
        Place(node, parts[^1], value.Parent is null ? value : value.DeepClone(), pointer);
        return root;
    }

    /// <summary>Removes a member or an item; nothing where there is none.</summary>
    public static JsonObject Drop(this JsonObject root, string pointer)
    {
        var cut = pointer.LastIndexOf('/');
        var name = pointer[(cut + 1)..];
        switch (root.At(pointer[..cut]))
        {
            case JsonObject members:
                members.Remove(name);
                break;
            case JsonArray items when IsIndex(name, out var index) && index < items.Count:
                items.RemoveAt(index);
                break;
        }

        return root;
    }

    /// <summary>Pointers of every member, section and item below a node, each before what is in it.</summary>
    public static IEnumerable<string> Pointers(JsonNode? node, string at = "") => node switch
    {
        JsonObject members => members.SelectMany(member => Pointers(member.Value, $"{at}/{member.Key}").Prepend($"{at}/{member.Key}")),
        JsonArray items => items.Index().SelectMany(item => Pointers(item.Item, Item(at, item.Index)).Prepend(Item(at, item.Index))),
        _ => [],
    };

    /// <summary>The item of a list.</summary>
    public static string Item(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}/{index}");

    private static string[] Parts(string pointer) => pointer.Length == 0 ? [] : pointer[1..].Split('/');

    private static bool IsIndex(string part, out int index) => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out index);

    private static JsonNode? Child(JsonNode node, string part) => node switch
    {
        JsonObject members => members[part],
        JsonArray items when IsIndex(part, out var index) && index < items.Count => items[index],
        _ => null,
    };

    private static JsonNode Place(JsonNode node, string part, JsonNode value, string pointer)
    {
        switch (node)
        {
            case JsonObject members:
                members[part] = value;
                return value;
            case JsonArray items when part == "-" || (IsIndex(part, out var end) && end == items.Count):
                items.Add(value);
                return value;
            case JsonArray items when IsIndex(part, out var index) && index < items.Count:
                items[index] = value;
                return value;
            default:
                throw new ArgumentException($"There is no place {pointer}.", nameof(pointer));
        }
    }
}
