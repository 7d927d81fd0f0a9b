using ComplianceApi.Problems;

namespace ComplianceApi.Api.Requests;

/// <summary>The bytes of a JSON body, or what is wrong before they can be looked at.</summary>
public sealed class JsonBody
{
    /// <summary>Most bytes that one record or one profile may have, unpacked: 1 MiB.</summary>
    public const int MaxBytes = 1024 * 1024;

    private const string Json = "application/json";

    private JsonBody(ReadOnlyMemory<byte> bytes) => Bytes = bytes;

    private JsonBody(ProblemResult problem) => Problem = problem;

    /// <summary>The bytes as they came, unpacked.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>Too large, or of the wrong media type; else null.</summary>
    public ProblemResult? Problem { get; }

    /// <summary>Reads the body of <paramref name="request"/>.</summary>
    public static async Task<JsonBody> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        if (BodyType.Of(request) != Json || !BodyType.IsCodingTaken(request))
            return new JsonBody(BodyType.Refusal(request, [Json]));

        await using var body = new UnpackedBody(request, MaxBytes);
        try
        {
            var bytes = new MemoryStream();
            var buffer = new byte[16 * 1024];
            for (int read; (read = await body.Bytes.ReadAsync(buffer, cancel)) > 0;)
                bytes.Write(buffer, 0, read);
            return new JsonBody(bytes.ToArray());
        }
        catch (BodyLimitException)
        {
            return new JsonBody(new ProblemResult(ProblemKind.BodyTooLarge));
        }
        catch (InvalidDataException)
        {
            return new JsonBody(UnpackedBody.Unreadable);
        }
    }
}
