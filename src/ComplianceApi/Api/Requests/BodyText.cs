using System.Text.Json;
using Records.Faults;
using Records.Reading;
using Wire;

namespace ComplianceApi.Api.Requests;

/// <summary>A body that is no record, as JSON with one meaning.</summary>
internal static class BodyText
{
    /// <summary>The body without its byte order mark.</summary>
    public static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> utf8) => utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;

    /// <summary>The JSON; null, with the fault, where it cannot be read at all. Members given twice are left to <see cref="Duplicates"/>.</summary>
    public static JsonDocument? Parse(ReadOnlyMemory<byte> utf8, out Fault? unreadable)
    {
        utf8 = WithoutMark(utf8);
        unreadable = JsonText.Unreadable(utf8.Span);
        return unreadable is null ? JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = RecordReader.MaxDepth }) : null;
    }

    /// <summary>A fault for each member that its object has already.</summary>
    public static IEnumerable<Fault> Duplicates(JsonElement json, string place = "#")
    {
        if (json.ValueKind == JsonValueKind.Array)
            return json.EnumerateArray().SelectMany((item, index) => Duplicates(item, FormattableString.Invariant($"{place}/{index}")));
        if (json.ValueKind != JsonValueKind.Object)
            return [];

        var seen = new HashSet<string>(StringComparer.Ordinal);
        return json.EnumerateObject().SelectMany(member =>
        {
            var name = JsonNames.Of(member);
            return seen.Add(name)
                ? Duplicates(member.Value, Below(place, name))
                : [new Fault(Below(place, name), FaultCodes.DuplicateMember, "The object has more than one member of this name.")];
        });
    }

    /// <summary>The place of a member as a JSON Pointer in a URI fragment (RFC 6901, section 6).</summary>
    public static string Below(string place, string name) => $"{place}/{Uri.EscapeDataString(JsonText.PointerPartOf(name))}";
}
