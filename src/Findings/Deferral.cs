namespace Findings;

/// <summary>A part of a duty that a visit put off until the appliance is used again.</summary>
public sealed record Deferral
{
    /// <summary>The part, as <c>kind/part</c> or the kind alone.</summary>
    public required string Part { get; init; }

    /// <summary>What silence about it weighed when it was put off, and weighs when it comes back.</summary>
    public required Weight Weight { get; init; }

    /// <summary>Day of the visit that first put it off.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The stored evaluation of that visit; absent: the visit at hand, or one that was not stored.</summary>
    public string? EvaluationId { get; init; }

    /// <summary>True where it was made up at the visit at hand, so that nothing of it waits any more; absent otherwise.</summary>
    public bool? MadeUp { get; init; }

    /// <summary>Does it still wait?</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public bool Waits => MadeUp != true;
}
