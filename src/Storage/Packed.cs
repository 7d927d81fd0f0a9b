using System.IO.Compression;

namespace Storage;

/// <summary>Bytes as they are stored: packed (zlib), the fast way.</summary>
internal static class Packed
{
    private const int BufferSize = 16 * 1024;

    public static byte[] Of(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var zlib = Packing(packed))
            zlib.Write(bytes);
        return packed.ToArray();
    }

    /// <summary>What <paramref name="write"/> writes, packed; it may close what it writes to.</summary>
    public static byte[] Written(Action<Stream> write)
    {
        using var packed = new MemoryStream();
        using (var zlib = new BufferedStream(Packing(packed), BufferSize))
            write(zlib);
        return packed.ToArray();
    }

    /// <summary>The bytes again. JSON that was stored before bytes were packed begins with a brace, which packed bytes never do.</summary>
    public static byte[] Open(byte[] stored)
    {
        if (stored is [(byte)'{', ..])
            return stored;

        using var zlib = Reader(stored);
        using var bytes = new MemoryStream();
        zlib.CopyTo(bytes);
        return bytes.ToArray();
    }

    /// <summary>Reads packed bytes piece by piece.</summary>
    public static Stream Reader(byte[] packed) => new BufferedStream(new ZLibStream(new MemoryStream(packed), CompressionMode.Decompress), BufferSize);

    private static ZLibStream Packing(MemoryStream packed) => new(packed, CompressionLevel.Fastest, leaveOpen: true);
}
