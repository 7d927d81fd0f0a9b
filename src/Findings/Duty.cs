using System.Text.Json.Serialization;
using Wire;

namespace Findings;

/// <summary>What the silence of a record weighs.</summary>
[JsonConverter(typeof(WireEnumConverter<Weight>))]
public enum Weight
{
    /// <summary>Good practice of this job: the record is advisory for it, and closing does not wait.</summary>
    Should,

    /// <summary>Law, or nobody could otherwise exclude a danger of the work that was done: the record is incomplete, and closing waits.</summary>
    Must,
}

/// <summary>How far a record shows that a duty was done.</summary>
[JsonConverter(typeof(WireEnumConverter<DutyState>))]
public enum DutyState
{
    /// <summary>Everything that it asks for is shown.</summary>
    Met,

    /// <summary>Something that it asks for is put off until the boiler is used again.</summary>
    Deferred,

    /// <summary>Something was not done, for a reason that counts.</summary>
    ByReason,

    /// <summary>Something that it asks for is not shown.</summary>
    Missing,

    /// <summary>The record says two things: it speaks against the reason or the statement on which the duty rests.</summary>
    Contradicted,

    /// <summary>Something is shown that is not as it must be.</summary>
    Bad,
}

/// <summary>Something that this visit calls for.</summary>
public sealed class Duty
{
    /// <summary>Its kind.</summary>
    public required string Kind { get; init; }

    /// <summary>What it asks for, in words.</summary>
    [WholeOnly]
    public required string Title { get; init; }

    /// <summary>What silence about it weighs, the gravest of its parts.</summary>
    public required Weight Weight { get; init; }

    /// <summary>How far the record shows that it was done, the gravest of its parts.</summary>
    public required DutyState State { get; init; }

    /// <summary>should, of a must of which only good practice is not shown, which holds nothing; absent where what is not shown weighs as the duty does.</summary>
    public Weight? NotShown { get; init; }

    /// <summary>What calls for it.</summary>
    [WholeOnly]
    public required IReadOnlyList<DutyCause> Because { get; init; }

    /// <summary>The clauses that it rests on.</summary>
    [WholeOnly]
    public required IReadOnlyList<Reference> References { get; init; }
}

/// <summary>Something of the record that calls for a duty.</summary>
/// <param name="Pointer">JSON Pointer of what calls for it; absent where no one member does.</param>
/// <param name="Words">The same in words.</param>
public sealed record DutyCause(string? Pointer, string Words)
{
    /// <summary>The stored evaluation of the earlier visit that calls for it; absent where none does.</summary>
    public string? EvaluationId { get; init; }
}
