using System.Globalization;
using Microsoft.OpenApi;

namespace ComplianceApi.Api.OpenApi;

/// <summary>
/// Bounds for whatever an answer carries and no attribute bounds, so that a caller can plan for the longest. They are wide, since an
/// answer quotes its record; each is met by every answer of the test run.
/// </summary>
internal static class AnswerBounds
{
    private const string Sha256 = "^[0-9a-f]{64}$";

    /// <summary>Larger whole numbers are not read exactly by every client (RFC 8259, section 6).</summary>
    private const long LargestWhole = 9_007_199_254_740_991;

    public static void Bound(OpenApiSchema schema, string? member)
    {
        switch (schema.Type)
        {
            case JsonSchemaType.String when schema.Enum is not { Count: > 0 } && schema.MaxLength is null:
                if (member is "LawHash" or "CodeHash" or "InputHash" or "ResultHash")
                    schema.Pattern = Sha256;
                schema.MaxLength = LongestOf(schema, member);
                break;

            case JsonSchemaType.Array:
                schema.MaxItems ??= 100_000;
                break;

            case JsonSchemaType.Integer:
                schema.Minimum ??= "0";
                schema.Maximum ??= schema.Format == "int64" ? LargestWhole.ToString(CultureInfo.InvariantCulture) : int.MaxValue.ToString(CultureInfo.InvariantCulture);
                break;

            default:
                break;
        }
    }

    private static int LongestOf(OpenApiSchema schema, string? member) => (schema.Format, member) switch
    {
        ("date", _) => 10,
        ("date-time", _) => 50,
        (_, "LawHash" or "CodeHash" or "InputHash" or "ResultHash") => 64,
        (_, "Unit" or "Code" or "TraceId" or "Status" or "EvaluationId" or "RecordId" or "RuleId" or "ProfileId" or "Topic" or "Version") => 200,
        _ => 10_000,
    };
}
