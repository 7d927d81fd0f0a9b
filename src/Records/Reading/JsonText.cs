using System.Globalization;
using System.Text.Json;
using System.Text.Unicode;
using Records.Faults;

namespace Records.Reading;

/// <summary>Whether a body is JSON at all, and the texts in it.</summary>
public static class JsonText
{
    private const int LongestName = 100;

    /// <summary>Why a body cannot be read as JSON; null when it can. Members given twice are left to the finder of faults.</summary>
    /// <param name="utf8">The body.</param>
    /// <param name="maxDepth">How many levels of objects and lists it may have.</param>
    public static Fault? Unreadable(ReadOnlySpan<byte> utf8, int maxDepth = RecordReader.MaxDepth)
    {
        if (utf8.IsEmpty)
        {
            return new Fault("#", FaultCodes.EmptyBody, "The body is empty; a JSON object is expected.");
        }

        if (!Utf8.IsValid(utf8))
        {
            return new Fault("#", FaultCodes.NotUtf8, "The body is not UTF-8.");
        }

        try
        {
            var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = int.MaxValue });
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray && reader.CurrentDepth >= maxDepth)
                {
                    return new Fault("#", FaultCodes.TooDeep, $"The body is nested deeper than {maxDepth} levels.");
                }
            }

            return null;
        }
        catch (JsonException fault)
        {
            var place = string.Create(CultureInfo.InvariantCulture, $"line {fault.LineNumber + 1}, byte {fault.BytePositionInLine + 1}");
            return new Fault("#", FaultCodes.NotJson, $"The body is not JSON: {place}.");
        }
    }

    /// <summary>A text; null when it has half of a surrogate pair, which JSON can write and Unicode forbids.</summary>
    public static string? Of(JsonElement json)
    {
        try
        {
            return json.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>A member's name as a part of a JSON Pointer (RFC 6901, section 3), cut to a sane length.</summary>
    public static string PointerPartOf(string name)
    {
        var shown = name.Length > LongestName ? name[..LongestName] + "..." : name;
        return shown.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
    }
}
