using System.IO.Compression;
using ComplianceApi.Problems;
using Records.Faults;

namespace ComplianceApi.Api.Requests;

/// <summary>The bytes of a request's body, unpacked where they came packed, and never more of them than are taken.</summary>
internal sealed class UnpackedBody : IAsyncDisposable
{
    private readonly MeasuredStream _arrived;
    private readonly GZipStream? _unpacking;

    /// <param name="request">The request, whose coding is one of <see cref="BodyType.Codings"/>.</param>
    /// <param name="mostBytes">Most bytes, unpacked.</param>
    /// <param name="isHashed">Whether the hash of the unpacked bytes is asked for.</param>
    public UnpackedBody(HttpRequest request, long mostBytes, bool isHashed = false)
    {
        _arrived = new MeasuredStream(request.Body, long.MaxValue);
        _unpacking = BodyType.CodingOf(request) == BodyType.Gzip ? new GZipStream(_arrived, CompressionMode.Decompress, leaveOpen: true) : null;
        Bytes = new MeasuredStream((Stream?)_unpacking ?? _arrived, mostBytes, _unpacking is null ? null : _arrived, isHashed);
    }

    /// <summary>The bytes, unpacked. Reading them throws <see cref="BodyLimitException"/> and <see cref="InvalidDataException"/>.</summary>
    public MeasuredStream Bytes { get; }

    /// <summary>Refuses what cannot be unpacked.</summary>
    public static ProblemResult Unreadable => ProblemResult.Of(FaultKind.Unreadable, [new Fault("#", "notGzip", "The body is not packed with gzip, was cut off, or has something else behind what is packed.")]);

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await Bytes.DisposeAsync();
        if (_unpacking is not null)
            await _unpacking.DisposeAsync();
        await _arrived.DisposeAsync();
    }
}
