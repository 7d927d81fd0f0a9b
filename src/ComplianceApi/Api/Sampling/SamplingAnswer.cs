namespace ComplianceApi.Api.Sampling;

/// <summary>A sample: how many, which, and what the visits show of the whole.</summary>
public sealed record SamplingAnswer
{
    /// <summary>How many there are; absent where the population counts as unlimited.</summary>
    public int? Population { get; init; }

    /// <summary>From how many faulty ones on the sample is to show it; absent where the population counts as unlimited.</summary>
    public int? TolerableCount { get; init; }

    /// <summary>The share, where it was given. Unit (UCUM): %.</summary>
    public decimal? TolerableSharePercent { get; init; }

    /// <summary>With which confidence. Unit (UCUM): %.</summary>
    public required decimal ConfidencePercent { get; init; }

    /// <summary>How many faults the sample may show all the same.</summary>
    public required int AllowedFaults { get; init; }

    /// <summary>How many to visit.</summary>
    public required int SampleSize { get; init; }

    /// <summary>What that sample would show, in one sentence.</summary>
    public required string Meaning { get; init; }

    /// <summary>Which to visit, where items were given.</summary>
    public Draw? Draw { get; init; }

    /// <summary>What the visits show of the whole, where they were given.</summary>
    public VisitedSample? AfterVisits { get; init; }

    /// <summary>How the numbers were worked out.</summary>
    public required string Method { get; init; }

    /// <summary>What to keep in mind.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}

/// <summary>Which to visit, in the order in which they were drawn.</summary>
public sealed record Draw
{
    /// <summary>SHA-256 of the seed (UTF-8, lower-case hex): make it known before the list of items is fixed, and the seed afterwards.</summary>
    public required string SeedPromise { get; init; }

    /// <summary>SHA-256 of the items in ascending order of their code units (UTF-16), each followed by a line feed, in UTF-8, lower-case hex.</summary>
    public required string ItemsHash { get; init; }

    /// <summary>How the draw is made, so that anybody can repeat it.</summary>
    public required string Generator { get; init; }

    /// <summary>Those drawn.</summary>
    public required IReadOnlyList<string> Items { get; init; }
}

/// <summary>What the visits show of the whole.</summary>
public sealed record VisitedSample
{
    /// <summary>How many were visited.</summary>
    public required int Visited { get; init; }

    /// <summary>How many of these were faulty.</summary>
    public required int Faulty { get; init; }

    /// <summary>Exact upper bound of how many of the whole population are faulty.</summary>
    public required int AtMostFaulty { get; init; }

    /// <summary>The same as a share of the population. Unit (UCUM): %.</summary>
    public required decimal AtMostSharePercent { get; init; }

    /// <summary>Whether the bound lies below what is tolerated.</summary>
    public required bool IsBelowTolerable { get; init; }

    /// <summary>The same in one sentence.</summary>
    public required string Meaning { get; init; }
}
