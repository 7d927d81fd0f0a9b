using System.Net.Http.Headers;
using System.Text;

namespace ComplianceApi;

/// <summary>The bytes of a JSON body, or what is wrong before they can be looked at.</summary>
public sealed class JsonBody
{
    /// <summary>Most bytes that one record or one profile may have: 1 MiB.</summary>
    public const int MaxBytes = 1024 * 1024;

    private JsonBody(ReadOnlyMemory<byte> bytes) => Bytes = bytes;

    private JsonBody(ProblemResult problem) => Problem = problem;

    /// <summary>The bytes as they came.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>Too large, or of the wrong media type; else null.</summary>
    public ProblemResult? Problem { get; }

    /// <summary>Reads the body of <paramref name="request"/>.</summary>
    public static async Task<JsonBody> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        if (!IsJson(request))
        {
            request.HttpContext.Response.Headers.Accept = "application/json";
            return new JsonBody(new ProblemResult(ProblemKind.UnsupportedMediaType));
        }

        var bytes = new MemoryStream();
        var buffer = new byte[16 * 1024];
        for (int read; (read = await request.Body.ReadAsync(buffer, cancel)) > 0;)
        {
            bytes.Write(buffer, 0, read);
            if (bytes.Length > MaxBytes)
                return new JsonBody(new ProblemResult(ProblemKind.BodyTooLarge));
        }

        return new JsonBody(bytes.ToArray());
    }

    private static bool IsJson(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
        && string.Equals(type.MediaType, "application/json", StringComparison.OrdinalIgnoreCase)
        && (type.CharSet is null || string.Equals(type.CharSet.Trim('"'), Encoding.UTF8.WebName, StringComparison.OrdinalIgnoreCase))
        && (request.Headers.ContentEncoding.Count == 0 || request.Headers.ContentEncoding == "identity");
}
