namespace Findings;

/// <summary>A limit as it stood on the record's date. At least one of <c>min</c>, <c>max</c> and <c>text</c> is given.</summary>
public sealed class Limit
{
    /// <summary>Smallest conforming value, itself conforming.</summary>
    public decimal? Min { get; init; }

    /// <summary>Largest conforming value, itself conforming unless <c>maxExcluded</c>.</summary>
    public decimal? Max { get; init; }

    /// <summary>True where the value must stay below <c>max</c>.</summary>
    public bool? MaxExcluded { get; init; }

    /// <summary>The limit in words, where numbers do not say all of it.</summary>
    public string? Text { get; init; }

    /// <summary>Unit of the numbers (UCUM).</summary>
    public string? Unit { get; init; }

    /// <summary>Who set it.</summary>
    public required LimitOrigin Origin { get; init; }

    /// <summary>Document and clause, or how it came to be.</summary>
    public required string Source { get; init; }

    /// <summary>True when the figure was read in its published source; false when it stands from memory or as a proposal.</summary>
    public required bool Verified { get; init; }

    /// <summary>How well the figure is known; absent of a maker's or a deployer's own.</summary>
    public LimitStrength? Strength { get; init; }

    /// <summary>Whether it is a fact, worked out, or a judgement of this service; absent of a maker's or a deployer's own.</summary>
    [WholeOnly]
    public LimitKind? Kind { get; init; }

    /// <summary>The document that gives the figure; absent where none does.</summary>
    [WholeOnly]
    public string? Document { get; init; }

    /// <summary>Its edition.</summary>
    [WholeOnly]
    public string? Edition { get; init; }

    /// <summary>Where in it.</summary>
    [WholeOnly]
    public string? Clause { get; init; }

    /// <summary>The last day on which it was read there; absent where it was not.</summary>
    [WholeOnly]
    public DateOnly? ReadOn { get; init; }

    /// <summary>First day on which it applies.</summary>
    public DateOnly? InForceFrom { get; init; }

    /// <summary>Does <paramref name="value"/> conform? A value on the limit does, unless it is excluded. Values are compared unrounded.</summary>
    public bool Allows(decimal value) =>
        (Min is null || value >= Min) && (Max is null || value < Max || (value == Max && MaxExcluded != true));

    /// <summary>Distance of <paramref name="value"/> to the nearer bound, positive inside; null for a limit in words.</summary>
    public decimal? MarginOf(decimal value) => (value - Min, Max - value) switch
    {
        ({ } low, { } high) => Math.Min(low, high),
        ({ } low, null) => low,
        (null, { } high) => high,
        _ => null,
    };
}
