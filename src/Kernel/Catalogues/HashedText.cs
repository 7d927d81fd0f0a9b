using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Wire;

namespace Kernel.Catalogues;

/// <summary>Text on its way into a hash: bytes as they are, or fields and lines. Held in a pooled buffer until it is hashed.</summary>
internal sealed class HashedText : IBufferWriter<byte>, IDisposable
{
    private const int FirstSize = 32 * 1024;
    private const byte EndOfField = 0x1F;
    private const byte EndOfLine = 0x1E;

    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(FirstSize);
    private int _length;

    void IBufferWriter<byte>.Advance(int count) => _length += count;

    Memory<byte> IBufferWriter<byte>.GetMemory(int sizeHint)
    {
        Room(Math.Max(sizeHint, 1));
        return _bytes.AsMemory(_length);
    }

    Span<byte> IBufferWriter<byte>.GetSpan(int sizeHint) => Room(Math.Max(sizeHint, 1));

    public HashedText Field(string? text)
    {
        if (text is { Length: > 0 })
            _length += Encoding.UTF8.GetBytes(text, Room(Encoding.UTF8.GetMaxByteCount(text.Length)));
        return End(EndOfField);
    }

    public HashedText Field(decimal? number)
    {
        if (number is { } known)
            _length += CanonicalText.Write(known, Room(CanonicalText.LongestNumber));
        return End(EndOfField);
    }

    public HashedText Field(DateOnly? day) => Field(day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    public HashedText Fields(IReadOnlyList<string> texts)
    {
        foreach (var text in texts)
            Field(text);
        return this;
    }

    public void EndLine() => End(EndOfLine);

    /// <summary>SHA-256 of it all, lower-case hex.</summary>
    public string ToHash()
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(_bytes.AsSpan(0, _length), hash);
        return Convert.ToHexStringLower(hash);
    }

    public void Dispose() => ArrayPool<byte>.Shared.Return(_bytes);

    private HashedText End(byte mark)
    {
        Room(1)[0] = mark;
        _length++;
        return this;
    }

    private Span<byte> Room(int size)
    {
        if (_bytes.Length - _length < size)
        {
            var larger = ArrayPool<byte>.Shared.Rent(Math.Max(_bytes.Length * 2, _length + size));
            _bytes.AsSpan(0, _length).CopyTo(larger);
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = larger;
        }

        return _bytes.AsSpan(_length);
    }
}
