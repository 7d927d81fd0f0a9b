using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Findings;

/// <summary>
/// Writes answers by the writers that the compiler generated. Metadata with an encoder of its own would pass them over; these know none,
/// and the writer brings it. The bytes are those that <see cref="EvaluationJson.Wire"/> gives.
/// </summary>
public static class WireJson
{
    private static readonly JsonWriterOptions Options = new() { Encoder = EvaluationJson.Wire.Options.Encoder, SkipValidation = true };

    [ThreadStatic]
    private static ArrayBufferWriter<byte>? s_buffer;

    /// <summary>Writes <paramref name="value"/>.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="value">What.</param>
    /// <param name="type">Its metadata from the <c>Default</c> of a context.</param>
    public static void Write<T>(IBufferWriter<byte> output, T value, JsonTypeInfo<T> type)
    {
        using var writer = new Utf8JsonWriter(output, Options);
        JsonSerializer.Serialize(writer, value, type);
    }

    /// <summary>The bytes of <paramref name="value"/>.</summary>
    /// <param name="value">What.</param>
    /// <param name="type">Its metadata from the <c>Default</c> of a context.</param>
    public static byte[] ToBytes<T>(T value, JsonTypeInfo<T> type)
    {
        var buffer = s_buffer ??= new ArrayBufferWriter<byte>();
        buffer.ResetWrittenCount();
        Write(buffer, value, type);
        return buffer.WrittenSpan.ToArray();
    }
}
