namespace Findings;

/// <summary>
/// An answer to another record of the same visit, as far as it named dangers: sent again without what was dangerous, a record does not make it
/// undone.
/// </summary>
public sealed record EarlierAnswer
{
    /// <summary>Its evaluation.</summary>
    public string? EvaluationId { get; init; }

    /// <summary>When that record says that the visit ended.</summary>
    public required DateTimeOffset FinishedAt { get; init; }

    /// <summary>The dangers that it named, those put right among them.</summary>
    public required IReadOnlyList<PastDanger> Dangers { get; init; }
}
