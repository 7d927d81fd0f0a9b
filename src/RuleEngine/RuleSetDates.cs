namespace RuleEngine;

/// <summary>Of which days the rule set speaks.</summary>
public sealed class RuleSetDates
{
    private const int MonthsUntilOld = 12;

    /// <summary>The first day whose law the rules know. By the law of an earlier day nothing is a pass.</summary>
    public required DateOnly KnownFrom { get; init; }

    /// <summary>Why that day.</summary>
    public required string KnownFromBecause { get; init; }

    /// <summary>The day on which rules, limits and references were last held against the law and the standards.</summary>
    public required DateOnly ReviewedOn { get; init; }

    /// <summary>Does the law of <paramref name="asOf"/> lie so far behind the review that it may have changed?</summary>
    internal bool IsOldFor(DateOnly asOf) => asOf > ReviewedOn.AddMonths(MonthsUntilOld);
}
