using System.Text.Json.Serialization;
using Findings;
using Records;
using Records.Faults;
using Visits;
using Wire;

namespace Storage;

/// <summary>What an audit says of one record.</summary>
public sealed record AuditLine
{
    /// <summary>What stands in place of an outcome where the record was not judged.</summary>
    public const string Rejected = "rejected";

    /// <summary>Number of the record: its line in NDJSON and CSV, its place in a JSON array, from 1.</summary>
    public required long Line { get; init; }

    /// <summary>The caller's own id of the record, where one could be read.</summary>
    public string? RecordId { get; init; }

    /// <summary>The evaluation; absent when there is a problem.</summary>
    public Evaluation? Evaluation { get; init; }

    /// <summary>Line of the record of this audit that replaces this one, which the sums then leave out; absent when none does.</summary>
    public long? SupersededBy { get; init; }

    /// <summary>Why the record was not judged.</summary>
    public LineProblem? Problem { get; init; }

    /// <summary>What the whole record shows, by its wire name; rejected where it was not judged.</summary>
    internal string Outcome => Evaluation is { } evaluation ? WireNames.Of(evaluation.Outcome) : Rejected;
}

/// <summary>Why one record of an audit was not judged, with every fault of it.</summary>
public sealed record LineProblem : IJsonOnDeserialized
{
    private const string Unreadable = "unreadable-body";
    private const string Invalid = "invalid-body";
    private const string InternalError = "internal-error";

    private string _type = "";

    /// <summary>Kind of problem, as of a record posted on its own.</summary>
    // Kept as a word; whoever answers puts the address in its place at which it can be read up.
    public required string Type
    {
        get => _type;
        init => _type = value;
    }

    /// <summary>Every fault.</summary>
    public required IReadOnlyList<Fault> Errors { get; init; }

    /// <summary>Lines that were stored before December 2026 have an address there, of which the word is the last part.</summary>
    void IJsonOnDeserialized.OnDeserialized() => _type = _type[(_type.LastIndexOf('/') + 1)..];

    /// <summary>The record's own faults.</summary>
    public static LineProblem Of(FaultKind kind, IReadOnlyList<Fault> faults) =>
        new() { Type = kind == FaultKind.Unreadable ? Unreadable : Invalid, Errors = faults };

    /// <summary>A fault of this service.</summary>
    public static LineProblem Internal(string detail) => new() { Type = InternalError, Errors = [new Fault("#", "internalError", detail)] };
}

/// <summary>What an audit says of one record, with the record itself.</summary>
/// <param name="Line">The answer, with the whole evaluation.</param>
/// <param name="Record">The record; null when it was not judged.</param>
/// <param name="Utf8">Its bytes.</param>
public sealed record JudgedLine(AuditLine Line, ServiceRecord? Record, ReadOnlyMemory<byte> Utf8)
{
    /// <summary>What was looked up beside the record.</summary>
    public Lookup Beside { get; init; } = Lookup.None;
}
