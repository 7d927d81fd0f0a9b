using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Findings;

/// <summary>An evaluation as JSON: camelCase, absent members left out, members in the order of their declaration.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(Evaluation))]
[JsonSerializable(typeof(IReadOnlyList<MissingItem>))]
[JsonSerializable(typeof(PastVisit))]
[JsonSerializable(typeof(DueDate))]
public sealed partial class EvaluationJson : JsonSerializerContext
{
    /// <summary>The one form in which answers are written, stored and hashed.</summary>
    public static EvaluationJson Wire { get; } = new(new JsonSerializerOptions(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,

        // Readable apostrophes and degree signs; answers are served as JSON and never pasted into a page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
