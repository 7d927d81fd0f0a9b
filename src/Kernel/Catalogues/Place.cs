using System.Globalization;
using System.Text.Json.Nodes;

namespace Kernel.Catalogues;

/// <summary>A place in a JSON document, by JSON Pointer.</summary>
internal sealed class Place(JsonNode parent, string segment)
{
    /// <summary>The place at <paramref name="pointer"/>; with <paramref name="make"/>, objects on the way are made.</summary>
    public static Place At(JsonNode root, string pointer, bool make)
    {
        var segments = pointer.Split('/')[1..];
        var node = root;
        foreach (var segment in segments[..^1])
        {
            var next = new Place(node, segment);
            if (next.Value is null && make)
                next.Set(new JsonObject());
            node = next.Value ?? throw new ArgumentException($"There is nothing at '{pointer}'.", nameof(pointer));
        }

        return new Place(node, segments[^1]);
    }

    private JsonNode? Value => parent is JsonArray list ? list.ElementAtOrDefault(Index) : parent[segment];

    private int Index => segment == "-" ? parent.AsArray().Count : int.Parse(segment, CultureInfo.InvariantCulture);

    public void Remove()
    {
        if (Value is null)
            throw new InvalidOperationException($"There is nothing to remove at '{segment}'.");
        if (parent is JsonArray list)
            list.RemoveAt(Index);
        else
            parent.AsObject().Remove(segment);
    }

    public void Set(JsonNode? value)
    {
        if (parent is not JsonArray list)
            parent[segment] = value;
        else if (Index == list.Count)
            list.Add(value);
        else
            list[Index] = value;
    }
}
