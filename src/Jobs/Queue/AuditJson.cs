using System.Text.Json;
using System.Text.Json.Serialization;
using Findings;
using Jobs.Summary;
using Storage;

namespace Jobs.Queue;

/// <summary>What audits say, as JSON: in the same form as evaluations.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(AuditLine))]
[JsonSerializable(typeof(AuditSummary))]
[JsonSerializable(typeof(AuditEnd))]
[JsonSerializable(typeof(AuditStatus))]
[JsonSerializable(typeof(FindingRow))]
public sealed partial class AuditJson : JsonSerializerContext
{
    /// <summary>The one form in which answers are written and stored.</summary>
    public static AuditJson Wire { get; } = new(new JsonSerializerOptions(EvaluationJson.Wire.Options) { TypeInfoResolver = null });
}

/// <summary>The last line of an audit that is answered at once.</summary>
public sealed class AuditEnd
{
    /// <summary>What the whole audit shows.</summary>
    public required AuditSummary Summary { get; init; }
}
