using System.Text.Json;
using System.Text.Json.Serialization;
using Records.Values;

namespace Records.Reading;

/// <summary>The generated reader of the record, as strict as the framework can be; what it lets through all the same, the validators find.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    AllowDuplicateProperties = false,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    NumberHandling = JsonNumberHandling.Strict,
    PropertyNameCaseInsensitive = false,
    AllowTrailingCommas = false,
    ReadCommentHandling = JsonCommentHandling.Disallow,
    MaxDepth = RecordReader.MaxDepth,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    Converters = [typeof(ExactDecimalConverter)])]
[JsonSerializable(typeof(ServiceRecord))]
internal sealed partial class RecordJson : JsonSerializerContext;
