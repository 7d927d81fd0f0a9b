using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SecondOpinion.Tests;

/// <summary>A record in the making, with a note of every change.</summary>
internal sealed class Draft(JsonNode root)
{
    private readonly List<string> _changes = [];

    public JsonObject Root { get; } = root.AsObject();

    public IReadOnlyList<string> Changes => _changes;

    /// <summary>The day in <c>finishedAt</c>.</summary>
    public DateOnly Day => DateOnly.ParseExact(At("/finishedAt")!.GetValue<string>()[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture);

    public byte[] Bytes => JsonSerializer.SerializeToUtf8Bytes(Root);

    /// <summary>Notes a change that was made in <see cref="Root"/> itself.</summary>
    public void Note(string change) => _changes.Add(change);

    /// <summary>The node at a JSON Pointer, null where there is none.</summary>
    public JsonNode? At(string pointer)
    {
        JsonNode? node = Root;
        foreach (var part in Parts(pointer))
        {
            node = node switch
            {
                JsonObject members => members[part],
                JsonArray items when Index(part) < items.Count => items[Index(part)],
                _ => null,
            };
        }

        return node;
    }

    /// <summary>Sets or (null) removes a member and notes it.</summary>
    public void Change(string pointer, JsonNode? value)
    {
        if (value is null ? Remove(pointer) : Set(pointer, value))
            Note(value is null ? $"{pointer} removed" : $"{pointer} = {value.ToJsonString()}");
    }

    // Makes the objects on the way; appends to a list at its end; does nothing where a list on the way is absent or too short.
    private bool Set(string pointer, JsonNode value)
    {
        var cut = pointer.LastIndexOf('/');
        var name = pointer[(cut + 1)..];
        switch (cut == 0 ? Root : Made(pointer[..cut], name))
        {
            case JsonObject members:
                members[name] = value;
                return true;
            case JsonArray items when Index(name) == items.Count:
                items.Add(value);
                return true;
            case JsonArray items when Index(name) < items.Count:
                items[Index(name)] = value;
                return true;
            default:
                return false;
        }
    }

    private JsonNode? Made(string pointer, string next)
    {
        if (At(pointer) is { } node)
            return node;
        return !char.IsAsciiDigit(next[0]) && Set(pointer, new JsonObject()) ? At(pointer) : null;
    }

    private bool Remove(string pointer)
    {
        var cut = pointer.LastIndexOf('/');
        var name = pointer[(cut + 1)..];
        switch (At(pointer[..cut]))
        {
            case JsonObject members:
                return members.Remove(name);
            case JsonArray items when Index(name) < items.Count:
                items.RemoveAt(Index(name));
                return true;
            default:
                return false;
        }
    }

    private static string[] Parts(string pointer) => pointer.Length == 0 ? [] : pointer[1..].Split('/');

    private static int Index(string part) => int.Parse(part, NumberStyles.None, CultureInfo.InvariantCulture);
}
