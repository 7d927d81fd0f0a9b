using System.Net.Http.Headers;
using System.Text;
using ComplianceApi.Problems;

namespace ComplianceApi.Api.Requests;

/// <summary>What a body is said to be: its media type and how it is packed.</summary>
internal static class BodyType
{
    /// <summary>Not packed.</summary>
    public const string Plain = "identity";

    /// <summary>The media type in lower case; null where none is given or its text is not UTF-8.</summary>
    public static string? Of(HttpRequest request) => MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
        && (type.CharSet is null || type.CharSet.Trim('"').Equals(Encoding.UTF8.WebName, StringComparison.OrdinalIgnoreCase))
            ? type.MediaType!.ToLowerInvariant()
            : null;

    /// <summary>How the body is packed, in lower case.</summary>
    public static string CodingOf(HttpRequest request) => request.Headers.ContentEncoding.ToString() is { Length: > 0 } coding ? coding.ToLowerInvariant() : Plain;

    /// <summary>Refuses a body; the headers say what is taken (RFC 9110, sections 12.5.1 and 12.5.3).</summary>
    public static ProblemResult Refusal(HttpRequest request, IEnumerable<string> types, IReadOnlyList<string> codings)
    {
        var headers = request.HttpContext.Response.Headers;
        headers.Accept = string.Join(", ", types);
        if (codings.Contains(CodingOf(request), StringComparer.Ordinal))
            return new ProblemResult(ProblemKind.UnsupportedMediaType, $"Expected Content-Type {string.Join(" or ", types)} in UTF-8.");

        headers.AcceptEncoding = string.Join(", ", codings);
        return new ProblemResult(ProblemKind.UnsupportedMediaType, $"Expected Content-Encoding {string.Join(" or ", codings)}.");
    }
}
