namespace Calculations.Tests;

/// <summary>What a check value rests on; how each word is meant stands in the README of the vectors.</summary>
public enum Standing
{
    /// <summary>Read in the named source.</summary>
    Published,

    /// <summary>What the named call of the named library gives.</summary>
    Library,

    /// <summary>Worked out from values that were read in the named sources.</summary>
    Composed,

    /// <summary>Worked out a second time here.</summary>
    Recomputed,

    /// <summary>The source's value as remembered.</summary>
    Memory,

    /// <summary>Follows from what the words mean.</summary>
    Definition,

    /// <summary>A fact of the trade without a source.</summary>
    Practice,
}
