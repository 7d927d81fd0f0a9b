using System.Net.Http.Headers;
using System.Text;
using ComplianceApi.Problems;

namespace ComplianceApi.Api.Requests;

/// <summary>What a body is said to be: its media type and how it is packed.</summary>
internal static class BodyType
{
    /// <summary>Packed, with one or several members (RFC 1952).</summary>
    public const string Gzip = "gzip";

    private const string Plain = "identity";

    /// <summary>In which codings every body may come.</summary>
    public static readonly IReadOnlyList<string> Codings = [Gzip, Plain];

    /// <summary>The media type in lower case; null where none is given or its text is not UTF-8.</summary>
    public static string? Of(HttpRequest request) => MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
        && (type.CharSet is null || type.CharSet.Trim('"').Equals(Encoding.UTF8.WebName, StringComparison.OrdinalIgnoreCase))
            ? type.MediaType!.ToLowerInvariant()
            : null;

    /// <summary>How the body is packed, in lower case.</summary>
    public static string CodingOf(HttpRequest request) => request.Headers.ContentEncoding.ToString() is { Length: > 0 } coding ? coding.ToLowerInvariant() : Plain;

    /// <summary>Whether it is packed in a way that is taken.</summary>
    public static bool IsCodingTaken(HttpRequest request) => Codings.Contains(CodingOf(request), StringComparer.Ordinal);

    /// <summary>Refuses a body; the headers say what is taken (RFC 9110, sections 12.5.1 and 12.5.3).</summary>
    public static ProblemResult Refusal(HttpRequest request, IEnumerable<string> types)
    {
        var headers = request.HttpContext.Response.Headers;
        headers.Accept = string.Join(", ", types);
        if (IsCodingTaken(request))
            return new ProblemResult(ProblemKind.UnsupportedMediaType, $"Expected Content-Type {string.Join(" or ", types)} in UTF-8.");

        headers.AcceptEncoding = string.Join(", ", Codings);
        return new ProblemResult(ProblemKind.UnsupportedMediaType, $"Expected Content-Encoding {string.Join(" or ", Codings)}.");
    }
}
