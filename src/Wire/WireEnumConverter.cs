using System.Text.Json;
using System.Text.Json.Serialization;

namespace Wire;

/// <summary>Writes the enumerations of an answer in camelCase and never as numbers.</summary>
public sealed class WireEnumConverter<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.CamelCase, allowIntegerValues: false)
    where T : struct, Enum;
