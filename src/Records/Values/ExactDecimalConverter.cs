using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Records.Values;

/// <summary>Reads a number that a decimal holds exactly; refuses any other, and numbers in quotes.</summary>
internal sealed class ExactDecimalConverter : JsonConverter<decimal>
{
    public override decimal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var json = reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan;
        return reader.TokenType == JsonTokenType.Number && ExactDecimal.TryParse(json, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}
