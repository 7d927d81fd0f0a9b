using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Records.Reading;

namespace Records.Canonical;

/// <summary>
/// The one text of a record, whatever the order, spacing and number format in which it was posted, so that anybody can work out
/// its hash.
/// </summary>
/// <remarks>
/// The text is JSON in UTF-8 without byte order mark, without blanks or line breaks between tokens, made thus:
/// <list type="number">
/// <item>An object's members are sorted by name, comparing UTF-16 code units (all names are ASCII). A member that is absent or null is
/// left out. An empty object or list stays: <c>{}</c>, <c>[]</c>.</item>
/// <item>List items keep their order.</item>
/// <item>A number is written in plain notation (no exponent), without a leading plus, without zeros after its last digit behind the
/// point, without a bare point, with one zero before the point where it is below one; zero is <c>0</c>, never <c>-0</c>.
/// 4.50 and 45e-1 become <c>4.5</c>.</item>
/// <item>Dates are <c>"yyyy-MM-dd"</c>. Date-times stand as they were posted, character for character.</item>
/// <item>Enumeration values stand as their wire names, yes/no as <c>true</c> and <c>false</c>.</item>
/// <item>Texts stand as posted after JSON unescaping, without Unicode normalization. Escaped are only the quotation mark
/// (<c>\"</c>), the backslash (<c>\\</c>) and U+0000 to U+001F (<c>\u</c> with four lower-case hexadecimal digits).</item>
/// </list>
/// The hash of a record is SHA-256 over these bytes.
/// </remarks>
public static class CanonicalForm
{
    private static readonly JsonTypeInfo<ServiceRecord> Sorted = MakeSorted();
    private static readonly JsonWriterOptions Plain = new() { Encoder = Sorted.Options.Encoder, SkipValidation = true };

    /// <summary>The canonical bytes of a record.</summary>
    public static byte[] Write(ServiceRecord record) => JsonSerializer.SerializeToUtf8Bytes(record, Sorted);

    /// <summary>Writes the canonical bytes of a record to <paramref name="output"/>.</summary>
    public static void Write(ServiceRecord record, IBufferWriter<byte> output)
    {
        using var writer = new Utf8JsonWriter(output, Plain);
        JsonSerializer.Serialize(writer, record, Sorted);
    }

    private static JsonTypeInfo<ServiceRecord> MakeSorted()
    {
        var options = new JsonSerializerOptions(RecordJson.Default.Options)
        {
            TypeInfoResolver = RecordJson.Default.WithAddedModifier(SortMembers),

            // What the converters leave to the framework (days, times, enumeration values) holds nothing to escape.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };

        // Before the reader's own: the first that fits is taken.
        options.Converters.Insert(0, new CanonicalNumberConverter());
        options.Converters.Insert(0, new CanonicalTextConverter());
        return (JsonTypeInfo<ServiceRecord>)options.GetTypeInfo(typeof(ServiceRecord));
    }

    private static void SortMembers(JsonTypeInfo type)
    {
        foreach (var (order, member) in type.Properties.OrderBy(member => member.Name, StringComparer.Ordinal).Index())
            member.Order = order;
    }
}
