using System.Text;
using Records.Faults;
using Records.Many;
using Storage;

namespace Jobs.Queue;

/// <summary>The records of one chunk as they wait: number, fault and bytes of each, packed together.</summary>
internal static class ChunkPayload
{
    public static byte[] Write(IReadOnlyList<RecordLine> lines) => Packed.Written(packed =>
    {
        using var writer = new BinaryWriter(packed, Encoding.UTF8);
        writer.Write(lines.Count);
        foreach (var line in lines)
        {
            writer.Write(line.Number);
            writer.Write(line.Fault?.Code ?? "");
            writer.Write(line.Fault?.Detail ?? "");
            writer.Write(line.Utf8.Length);
            writer.Write(line.Utf8.Span);
        }
    });

    // Record by record: the bytes of a whole chunk in one piece would be a large object, which only a full collection frees.
    public static List<RecordLine> Read(byte[] payload)
    {
        using var reader = new BinaryReader(Packed.Reader(payload), Encoding.UTF8);
        var lines = new List<RecordLine>(reader.ReadInt32());
        for (var left = lines.Capacity; left > 0; left--)
        {
            var number = reader.ReadInt64();
            var (code, detail) = (reader.ReadString(), reader.ReadString());
            var utf8 = reader.ReadBytes(reader.ReadInt32());
            lines.Add(new RecordLine(number, utf8, code.Length > 0 ? new Fault("#", code, detail) : null));
        }

        return lines;
    }
}
