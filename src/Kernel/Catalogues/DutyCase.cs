using System.Text.Json;
using Findings;

namespace Kernel.Catalogues;

/// <summary>A case of a rule of the duties: what is changed in the example record, and what the rule must then make of it.</summary>
public sealed class DutyCase
{
    /// <summary>The situation in words.</summary>
    public required string Name { get; init; }

    /// <summary>Members to set, by JSON Pointer, as in a <see cref="RuleCase"/>.</summary>
    public IReadOnlyDictionary<string, JsonElement>? Set { get; init; }

    /// <summary>Members to remove, by JSON Pointer, before anything is set.</summary>
    public IReadOnlyList<string>? Remove { get; init; }

    /// <summary>Earlier visits that are looked up beside the record, the latest first.</summary>
    public IReadOnlyList<PastVisit>? History { get; init; }

    /// <summary>What the rule must make of it.</summary>
    public required DutyExpectation Expect { get; init; }

    /// <summary>The record of this case as JSON.</summary>
    public byte[] RecordFrom(ReadOnlySpan<byte> exampleRecord) => ChangedRecord.Of(exampleRecord, Remove, Set);
}

/// <summary>What a rule of the duties must make of a case: one that calls has calls, one that infers has infers.</summary>
public sealed class DutyExpectation
{
    /// <summary>Does the rule call for anything?</summary>
    public bool? Calls { get; init; }

    /// <summary>Parts that it must call for as a must.</summary>
    public IReadOnlyList<string>? Must { get; init; }

    /// <summary>Parts that it must call for as a should, and no more.</summary>
    public IReadOnlyList<string>? Should { get; init; }

    /// <summary>Parts that it must put off.</summary>
    public IReadOnlyList<string>? PutOff { get; init; }

    /// <summary>Parts that it must neither call for nor put off.</summary>
    public IReadOnlyList<string>? NotFor { get; init; }

    /// <summary>All that the rule must infer, each once; empty: nothing.</summary>
    public IReadOnlyList<string>? Infers { get; init; }
}
