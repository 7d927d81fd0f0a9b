using Findings;

namespace Kernel.Catalogues;

/// <summary>Which reason counts for what was not done (reasons.json).</summary>
public sealed class ReasonBook
{
    /// <summary>How it is read.</summary>
    public required string About { get; init; }

    /// <summary>What each duty comes to, as far as a reason can be given for it.</summary>
    public required IReadOnlyDictionary<string, string> Duties { get; init; }

    /// <summary>The conditions that a row can name, in words.</summary>
    public required IReadOnlyDictionary<string, string> Needs { get; init; }

    /// <summary>What counts: a reason, a duty and a member that have no row together excuse nothing.</summary>
    public required IReadOnlyList<ReasonRow> Rows { get; init; }

    /// <summary>What no row may excuse.</summary>
    public required IReadOnlyList<ReasonRuledOut> Never { get; init; }
}

/// <summary>A reason that counts, the duty and the members that it excuses, and under which conditions. All of them must hold.</summary>
public sealed class ReasonRow
{
    /// <summary>The reason, as a record writes it.</summary>
    public required string Because { get; init; }

    /// <summary>The kind of duty.</summary>
    public required string Duty { get; init; }

    /// <summary>Pointers of the members; an asterisk stands for any element.</summary>
    public required IReadOnlyList<string> What { get; init; }

    /// <summary>The gravest weight that it excuses.</summary>
    public required Weight Weight { get; init; }

    /// <summary>only: of what was left in use; not: of what was not; either.</summary>
    public required string LeftInUse { get; init; }

    /// <summary>Of which element alone, by its members.</summary>
    public IReadOnlyDictionary<string, string>? Where { get; init; }

    /// <summary>On which jobs alone; absent: on any.</summary>
    public IReadOnlyList<string>? Jobs { get; init; }

    /// <summary>On which jobs not.</summary>
    public IReadOnlyList<string>? NotJobs { get; init; }

    /// <summary>What the record must show besides.</summary>
    public IReadOnlyList<string>? Needs { get; init; }

    /// <summary>What must not stand beside it.</summary>
    public IReadOnlyList<string>? ContradictedBy { get; init; }

    /// <summary>The same in words.</summary>
    public required string When { get; init; }

    /// <summary>Where it comes from.</summary>
    public required string Source { get; init; }
}

/// <summary>What no reason may excuse.</summary>
public sealed class ReasonRuledOut
{
    /// <summary>Of these reasons alone; absent: of all.</summary>
    public IReadOnlyList<string>? Because { get; init; }

    /// <summary>Of these duties alone.</summary>
    public IReadOnlyList<string>? Duties { get; init; }

    /// <summary>Of these members alone, or of what these words say.</summary>
    public IReadOnlyList<string>? What { get; init; }

    /// <summary>Of the element alone that has these members.</summary>
    public IReadOnlyDictionary<string, string>? Where { get; init; }

    /// <summary>Of this weight alone.</summary>
    public Weight? Weight { get; init; }

    /// <summary>Only where it was left in use, or only where it was not.</summary>
    public string? LeftInUse { get; init; }

    /// <summary>But for what these words say.</summary>
    public string? Unless { get; init; }

    /// <summary>Under the law of this place alone.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>Before this day alone.</summary>
    public DateOnly? Before { get; init; }

    /// <summary>What is ruled out.</summary>
    public required string Says { get; init; }

    /// <summary>Where it comes from.</summary>
    public required string Source { get; init; }
}
