using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SecondOpinion.Tests.Records;

/// <summary>One change of a record: a member or item set or (null) removed. At the empty pointer: every day moved by a number of days.</summary>
internal sealed record Change(string Pointer, JsonNode? Value)
{
    /// <summary>The change as a report shows it.</summary>
    public override string ToString() =>
        Pointer.Length == 0 ? $"every day moved by {Value}" : Value is null ? $"{Pointer} removed" : $"{Pointer} = {Value.ToJsonString()}";
}

/// <summary>A record in the making: the example record, with a note of every change.</summary>
internal sealed class Draft
{
    private static readonly JsonNode Example = JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "example-record.json")))!;

    private readonly List<Change> _changes = [];

    public JsonObject Root { get; } = Example.DeepClone().AsObject();

    public IReadOnlyList<Change> Changes => _changes;

    /// <summary>The day in <c>finishedAt</c>.</summary>
    public DateOnly Day => DateOnly.ParseExact(At("/finishedAt")!.GetValue<string>()[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture);

    public byte[] Bytes => JsonSerializer.SerializeToUtf8Bytes(Root);

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

    /// <summary>Makes a change and notes it, unless it changes nothing.</summary>
    public void Apply(Change change)
    {
        var (pointer, value) = change;
        if (pointer.Length == 0)
            Days.Move(Root, value!.GetValue<int>());
        else if (value is null ? !Remove(pointer) : !Set(pointer, value.DeepClone()))
            return;

        _changes.Add(change);
    }

    public void Apply(string pointer, JsonNode? value) => Apply(new Change(pointer, value));

    // Makes the objects and lists on the way; appends to a list at its end; does nothing where a list on the way is absent or too short.
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
        return (next == "0" || !char.IsAsciiDigit(next[0])) && Set(pointer, next == "0" ? new JsonArray() : new JsonObject()) ? At(pointer) : null;
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
