using System.Buffers.Binary;
using System.Security.Cryptography;

namespace ComplianceApi.Api.Audits;

/// <summary>Passes a body on, counts and hashes what passes, and stops it where it grows too large.</summary>
internal sealed class MeasuredStream(Stream inner, long mostBytes, MeasuredStream? packed = null) : Stream
{
    /// <summary>Records pack to a fiftieth at best, copies of one record to a three-hundredth. Beyond this it is no list of records.</summary>
    private const int MostPacked = 500;

    private const long Unsuspicious = 64 * 1024 * 1024;

    private readonly byte[] _tail = new byte[4];
    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    /// <summary>Bytes so far.</summary>
    public long Count { get; private set; }

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => Count; set => throw new NotSupportedException(); }

    /// <summary>SHA-256 of what has passed, lower-case hex.</summary>
    public string Hash() => Convert.ToHexStringLower(_hash.GetCurrentHash());

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        var read = await inner.ReadAsync(buffer, cancellationToken);
        Count += read;
        _hash.AppendData(buffer.Span[..read]);
        KeepTail(buffer.Span[..read]);
        if (Count > mostBytes || (Count > Unsuspicious && packed is not null && Count / MostPacked > packed.Count))
            throw new BodyLimitException();

        // A packed body that was cut off unpacks without a complaint, and its last records would be lost unseen. It ends with its
        // unpacked length (RFC 1952, section 2.3.1), modulo 2^32.
        if (read == 0 && buffer.Length > 0 && packed is not null && BinaryPrimitives.ReadUInt32LittleEndian(packed._tail) != (uint)Count)
            throw new InvalidDataException("The packed body was cut off, or is made of several.");
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

    private void KeepTail(ReadOnlySpan<byte> read)
    {
        var kept = Math.Max(_tail.Length - read.Length, 0);
        _tail.AsSpan(_tail.Length - kept).CopyTo(_tail);
        read[^(_tail.Length - kept)..].CopyTo(_tail.AsSpan(kept));
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            _hash.Dispose();
        base.Dispose(disposing);
    }
}

/// <summary>A body has grown beyond what is taken.</summary>
internal sealed class BodyLimitException() : Exception("The body is too large.");
