using Records.Faults;
using Records.Reading;

namespace Records.Many;

/// <summary>One record among many.</summary>
/// <param name="Number">Its number from 1: the line of a text, the place in a JSON array.</param>
/// <param name="Utf8">Its JSON; empty when there is a <paramref name="Fault"/>.</param>
/// <param name="Fault">Why it cannot be read as one record at all; else null.</param>
public sealed record RecordLine(long Number, ReadOnlyMemory<byte> Utf8, Fault? Fault = null)
{
    /// <summary>Most bytes that one record may have: 1 MiB.</summary>
    public const int MaxBytes = 1024 * 1024;

    /// <summary>The record, or every fault of it.</summary>
    /// <param name="jurisdictions">Codes of those whose law the rules hold; null: whatever is written is read.</param>
    public ReadResult Read(IReadOnlyList<string>? jurisdictions = null) => Fault is null ? RecordReader.Read(Utf8, jurisdictions) : new ReadResult([Fault]);

    internal static RecordLine TooLong(long number) =>
        new(number, default, new Fault("#", FaultCodes.TooLong, $"The record is longer than {MaxBytes} bytes and was not read."));
}
