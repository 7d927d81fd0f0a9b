using System.Diagnostics.CodeAnalysis;
using Records.Faults;

namespace Records.Reading;

/// <summary>A record, or everything that is wrong with it; never both.</summary>
public sealed class ReadResult
{
    internal ReadResult(ServiceRecord record) => Record = record;

    internal ReadResult(IReadOnlyList<Fault> faults)
    {
        Faults = faults;
        Kind = faults.Any(f => FaultCodes.IsUnreadable(f.Code)) ? FaultKind.Unreadable : FaultKind.Invalid;
    }

    /// <summary>The record; null when there are faults.</summary>
    public ServiceRecord? Record { get; }

    /// <summary>Every fault, sorted by its place in the record (the order in which the record's types declare their members).</summary>
    public IReadOnlyList<Fault> Faults { get; } = [];

    /// <summary>Whether the body could not be read (400) or is wrong (422); null when there are no faults.</summary>
    public FaultKind? Kind { get; }

    /// <summary>Whether there is a record.</summary>
    [MemberNotNullWhen(true, nameof(Record))]
    [MemberNotNullWhen(false, nameof(Kind))]
    public bool IsRecord => Record is not null;
}
