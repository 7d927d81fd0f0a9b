using System.Text.Json;
using System.Text.Json.Serialization;
using Wire;

namespace Records.Values;

/// <summary>
/// Reads an enumeration by its exact wire name: no other case, no blanks, no joined names, no numbers, all of which the framework's
/// own converter lets through.
/// </summary>
/// <typeparam name="T">The enumeration.</typeparam>
public sealed class ExactEnumConverter<T> : JsonConverter<T> where T : struct, Enum
{
    private static readonly T[] Values = Enum.GetValues<T>();
    private static readonly string[] Names = [.. WireNames.OfValues(typeof(T))];

    /// <inheritdoc/>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String)
        {
            for (var i = 0; i < Names.Length; i++)
            {
                if (reader.ValueTextEquals(Names[i]))
                {
                    return Values[i];
                }
            }
        }

        throw new JsonException();
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Names[Array.IndexOf(Values, value)]);
}
