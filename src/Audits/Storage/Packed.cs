using System.IO.Compression;

namespace Audits;

/// <summary>Bytes as they are stored: packed (zlib), the fast way.</summary>
internal static class Packed
{
    public static byte[] Of(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            zlib.Write(bytes);
        return packed.ToArray();
    }

    /// <summary>The bytes again. JSON that was stored before bytes were packed begins with a brace, which packed bytes never do.</summary>
    public static byte[] Open(byte[] stored)
    {
        if (stored is [(byte)'{', ..])
            return stored;

        using var zlib = new ZLibStream(new MemoryStream(stored), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        zlib.CopyTo(bytes);
        return bytes.ToArray();
    }
}
