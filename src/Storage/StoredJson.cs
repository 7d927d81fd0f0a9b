using System.Text.Json;
using System.Text.Json.Serialization;
using Findings;

namespace Storage;

/// <summary>What is kept of an audit's record, as JSON: in the same form as evaluations.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(AuditLine))]
[JsonSerializable(typeof(EvaluationContext))]
public sealed partial class StoredJson : JsonSerializerContext
{
    /// <summary>The one form in which answers are written and stored.</summary>
    public static StoredJson Wire { get; } = new(new JsonSerializerOptions(EvaluationJson.Wire.Options) { TypeInfoResolver = null });
}
