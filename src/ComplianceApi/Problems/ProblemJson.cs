using System.Text.Json;
using System.Text.Json.Serialization;
using Findings;

namespace ComplianceApi.Problems;

/// <summary>How problems are written: with the settings of <see cref="EvaluationJson"/>, as all answers are.</summary>
[JsonSerializable(typeof(Problem))]
internal sealed partial class ProblemJson : JsonSerializerContext
{
    public static ProblemJson Wire { get; } = new(new JsonSerializerOptions(EvaluationJson.Wire.Options) { TypeInfoResolver = null });
}
