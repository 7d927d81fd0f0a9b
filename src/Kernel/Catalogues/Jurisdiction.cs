namespace Kernel.Catalogues;

/// <summary>A country or part of one whose law the rules hold (jurisdiction.json in its folder).</summary>
public sealed class Jurisdiction
{
    /// <summary>ISO 3166-2.</summary>
    public required string Code { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }
}
