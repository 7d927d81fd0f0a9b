using ComplianceApi.Problems;

namespace ComplianceApi.Api.Requests;

/// <summary>The bytes of a JSON body, or what is wrong before they can be looked at.</summary>
public sealed class JsonBody
{
    /// <summary>Most bytes that one record or one profile may have: 1 MiB.</summary>
    public const int MaxBytes = 1024 * 1024;

    private const string Json = "application/json";

    private JsonBody(ReadOnlyMemory<byte> bytes) => Bytes = bytes;

    private JsonBody(ProblemResult problem) => Problem = problem;

    /// <summary>The bytes as they came.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>Too large, or of the wrong media type; else null.</summary>
    public ProblemResult? Problem { get; }

    /// <summary>Reads the body of <paramref name="request"/>.</summary>
    public static async Task<JsonBody> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        if (BodyType.Of(request) != Json || BodyType.CodingOf(request) != BodyType.Plain)
            return new JsonBody(BodyType.Refusal(request, [Json], [BodyType.Plain]));

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
}
