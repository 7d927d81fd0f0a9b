using System.Text.Json.Serialization;
using Wire;

namespace Findings;

/// <summary>The dangers of a visit, and what was done about them.</summary>
public sealed class Situation
{
    /// <summary>Each danger that the record shows or that the engineer classed.</summary>
    public required IReadOnlyList<Danger> Dangers { get; init; }

    /// <summary>The state of the worst of them.</summary>
    public required DangerState State { get; init; }

    /// <summary>How the appliance was left, as the record names it; absent where it does not say.</summary>
    public string? Appliance { get; init; }

    /// <summary>True where the record shows everything done that a danger calls for; that is not to say that it is gone.</summary>
    public required bool Handled { get; init; }

    /// <summary>Kinds of the duties that are not met, sorted.</summary>
    public required IReadOnlyList<string> Open { get; init; }
}

/// <summary>A danger of a visit.</summary>
public sealed class Danger
{
    /// <summary>The rule that found it.</summary>
    public required string RuleId { get; init; }

    /// <summary>JSON Pointer of what is dangerous.</summary>
    public required string Subject { get; init; }

    /// <summary>What became of it.</summary>
    public required DangerState State { get; init; }

    /// <summary>True where what was done counts: put right and shown right, isolated where it must be, or refused with what is then owed.</summary>
    public required bool Handled { get; init; }

    /// <summary>JSON Pointer of the defect that answers it; absent where none does.</summary>
    public string? Defect { get; init; }

    /// <summary>Where it was isolated, as the defect names it.</summary>
    public string? IsolatedAt { get; init; }

    /// <summary>Of what it is, where not of this boiler, as the defect names it; absent: of this boiler.</summary>
    public string? Concerns { get; init; }

    /// <summary>Does it stay with this boiler until it is put right?</summary>
    [JsonIgnore]
    public bool IsLeftOnTheAppliance => Concerns is null && State != DangerState.PutRight;
}

/// <summary>What became of a danger, the worst first.</summary>
[JsonConverter(typeof(WireEnumConverter<DangerState>))]
public enum DangerState
{
    /// <summary>Nothing was done about it, or nothing that could count.</summary>
    Standing,

    /// <summary>Nobody looked, or nobody says, so that it cannot be excluded.</summary>
    NotExcluded,

    /// <summary>It was refused to make it safe.</summary>
    LeftByRefusal,

    /// <summary>What is dangerous is isolated, and nobody can use it as it was left.</summary>
    TakenOutOfUse,

    /// <summary>Put right, and shown right by a later look or measurement.</summary>
    PutRight,
}
