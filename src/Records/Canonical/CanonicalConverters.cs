using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Wire;

namespace Records.Canonical;

/// <summary>Writes a number in its canonical form; nothing is read in it.</summary>
internal sealed class CanonicalNumberConverter : JsonConverter<decimal>
{
    public override decimal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => throw new NotSupportedException();

    public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options)
    {
        Span<byte> utf8 = stackalloc byte[CanonicalText.LongestNumber];
        writer.WriteRawValue(utf8[..CanonicalText.Write(value, utf8)], skipInputValidation: true);
    }
}

/// <summary>Writes a text with the canonical form's own few escapes; nothing is read in it.</summary>
internal sealed class CanonicalTextConverter : JsonConverter<string>
{
    private static readonly SearchValues<char> Escaped = SearchValues.Create([.. Enumerable.Range(0, ' ').Select(code => (char)code), '"', '\\']);
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => throw new NotSupportedException();

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options)
    {
        if (value.AsSpan().ContainsAny(Escaped))
            value = CanonicalText.Escape(value);

        var utf8 = ArrayPool<byte>.Shared.Rent(Utf8.GetMaxByteCount(value.Length) + 2);
        utf8[0] = (byte)'"';
        var length = 1 + Utf8.GetBytes(value, utf8.AsSpan(1));
        utf8[length++] = (byte)'"';
        writer.WriteRawValue(utf8.AsSpan(0, length), skipInputValidation: true);
        ArrayPool<byte>.Shared.Return(utf8);
    }
}
