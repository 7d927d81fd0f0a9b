using System.Security.Cryptography;

namespace ComplianceApi.Api.Requests;

/// <summary>Passes a body on, counts what passes, and stops it where it grows too large.</summary>
/// <param name="inner">Where it comes from.</param>
/// <param name="mostBytes">How many bytes are taken.</param>
/// <param name="packed">What it is unpacked from; null where it is not.</param>
/// <param name="isHashed">Whether its hash is asked for.</param>
internal sealed class MeasuredStream(Stream inner, long mostBytes, MeasuredStream? packed = null, bool isHashed = false) : Stream
{
    /// <summary>Records pack to a fiftieth at best, copies of one record to a three-hundredth. Beyond this it is no list of records.</summary>
    private const int MostPacked = 500;

    private const long Unsuspicious = 64 * 1024 * 1024;

    private readonly IncrementalHash? _hash = isHashed ? IncrementalHash.CreateHash(HashAlgorithmName.SHA256) : null;

    /// <summary>Bytes so far.</summary>
    public long Count { get; private set; }

    /// <summary>Whether its end was reached.</summary>
    private bool HasEnded { get; set; }

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => Count; set => throw new NotSupportedException(); }

    /// <summary>SHA-256 of what has passed, lower-case hex.</summary>
    public string Hash() => Convert.ToHexStringLower(_hash!.GetCurrentHash());

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        var read = await inner.ReadAsync(buffer, cancellationToken);
        Count += read;
        _hash?.AppendData(buffer.Span[..read]);
        HasEnded |= read == 0 && buffer.Length > 0;
        if (Count > mostBytes || (Count > Unsuspicious && packed is not null && Count / MostPacked > packed.Count))
            throw new BodyLimitException();

        // What unpacks stops where it meets something that is not packed, asks for no more, and the records behind it would be lost unseen.
        // That one was cut off it says itself (System.IO.Compression.UseStrictValidation).
        if (HasEnded && packed is { HasEnded: false })
            throw new InvalidDataException("There is more behind what is packed.");
        return read;
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException("Read it asynchronously.");

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            _hash?.Dispose();
        base.Dispose(disposing);
    }
}

/// <summary>A body has grown beyond what is taken.</summary>
internal sealed class BodyLimitException() : Exception("The body is too large.");
