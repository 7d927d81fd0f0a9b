namespace Kernel.Catalogues;

/// <summary>A line of the coverage ledger: the rules that cover a clause, or why none does.</summary>
public sealed record LedgerEntry
{
    /// <summary>The clause; absent: the document as a whole.</summary>
    public string? Clause { get; init; }

    /// <summary>What it is about.</summary>
    public required string Subject { get; init; }

    /// <summary>Ids of the rules that rest on it, by what they cite; null where none does.</summary>
    public IReadOnlyList<string>? Rules { get; init; }

    /// <summary>Why no rule can judge it.</summary>
    public string? NotAutomatable { get; init; }

    /// <summary>Why no rule judges it so far.</summary>
    public string? NotYet { get; init; }
}
