using ComplianceApi.Problems;
using Microsoft.OpenApi;

namespace ComplianceApi.Api.Requests;

/// <summary>
/// The header by which a caller marks a request and its repetitions as one
/// (draft-ietf-httpapi-idempotency-key-header-07, a draft still). The key is taken as it is written, quotes and all.
/// </summary>
public static class IdempotencyKey
{
    /// <summary>Name of the header.</summary>
    public const string Header = "Idempotency-Key";

    private const int MaxLength = 200;

    /// <summary>Its schema.</summary>
    public static OpenApiSchema Schema => new() { Type = JsonSchemaType.String, MinLength = 1, MaxLength = MaxLength, Pattern = "^[!-~]+$" };

    /// <summary>The key of <paramref name="request"/>, null without one.</summary>
    /// <returns>False when the header has something else.</returns>
    public static bool TryRead(HttpRequest request, out string? key)
    {
        ArgumentNullException.ThrowIfNull(request);
        var values = request.Headers[Header];
        key = values.Count == 0 ? null : values.ToString();
        return values.Count == 0 || (values.Count == 1 && key!.Length is > 0 and <= MaxLength && key.All(c => c is >= '!' and <= '~'));
    }

    /// <summary>The answer to a header that has no key.</summary>
    public static ProblemResult Refusal => new(ProblemKind.InvalidParameter, errors:
        [new() { Parameter = Header, Code = "unknownValue", Detail = "Expected one key of 1 to 200 visible ASCII characters without blanks." }]);
}

/// <summary>Marks a route that takes an <see cref="IdempotencyKey"/>.</summary>
/// <param name="Description">What a key does there.</param>
public sealed record TakesIdempotencyKey(string Description);
