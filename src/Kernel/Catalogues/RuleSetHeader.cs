namespace Kernel.Catalogues;

/// <summary>What the rule set says of itself (rule-set.json).</summary>
public sealed class RuleSetHeader
{
    private const int MonthsUntilOld = 12;

    /// <summary>Name of the rule set.</summary>
    public required string Id { get; init; }

    /// <summary>Its version, which is not that of the program.</summary>
    public required string Version { get; init; }

    /// <summary>The first day on which this version counts in place of the one before.</summary>
    public required DateOnly CountsFrom { get; init; }

    /// <summary>The first day whose law the rules know. By the law of an earlier day nothing is a pass.</summary>
    public required DateOnly KnownFrom { get; init; }

    /// <summary>Why that day.</summary>
    public required string KnownFromBecause { get; init; }

    /// <summary>The day on which rules, limits and references were last held against the law and the standards.</summary>
    public required DateOnly ReviewedOn { get; init; }

    /// <summary>Ids of limits of which nothing is shipped: tables that a deployer fills from a document of their own.</summary>
    public required IReadOnlyList<string> DeployersTables { get; init; }

    /// <summary>Whose law is meant where a caller who asks for questions does not say.</summary>
    public required string UsualJurisdiction { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Does the law of <paramref name="asOf"/> lie so far behind the review that it may have changed?</summary>
    internal bool IsOldFor(DateOnly asOf) => asOf > ReviewedOn.AddMonths(MonthsUntilOld);
}
