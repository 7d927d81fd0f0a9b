using System.Text.Json;
using System.Text.Json.Nodes;

namespace Kernel.Catalogues;

/// <summary>The record of a case.</summary>
internal static class ChangedRecord
{
    /// <summary>The example record without the members at <paramref name="remove"/>, and then with those of <paramref name="set"/>, as JSON.</summary>
    public static byte[] Of(ReadOnlySpan<byte> exampleRecord, IReadOnlyList<string>? remove, IReadOnlyDictionary<string, JsonElement>? set)
    {
        var record = JsonNode.Parse(exampleRecord)!;
        foreach (var pointer in remove ?? [])
            Place.At(record, pointer, make: false).Remove();
        foreach (var (pointer, value) in set ?? new Dictionary<string, JsonElement>(StringComparer.Ordinal))
            Place.At(record, pointer, make: true).Set(JsonSerializer.SerializeToNode(value));

        return JsonSerializer.SerializeToUtf8Bytes(record);
    }
}
