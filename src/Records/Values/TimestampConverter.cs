using System.Text.Json;
using System.Text.Json.Serialization;

namespace Records.Values;

/// <summary>Reads and writes a <see cref="Timestamp"/> as its own text.</summary>
public sealed class TimestampConverter : JsonConverter<Timestamp>
{
    /// <inheritdoc/>
    public override Timestamp Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && Timestamp.TryParse(reader.GetString()!, out var timestamp)
            ? timestamp
            : throw new JsonException();

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Timestamp value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);
}
