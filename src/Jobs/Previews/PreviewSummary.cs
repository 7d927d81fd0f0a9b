using Findings;
using Jobs.Summary;

namespace Jobs.Previews;

/// <summary>What a candidate would change in what the stored records show. It never says that a boiler is safe.</summary>
public sealed class PreviewSummary
{
    /// <summary>Evaluations of which at least one finding is new, changed or gone.</summary>
    public required int ChangedEvaluations { get; init; }

    /// <summary>How many evaluations had which overall outcome, and would have which.</summary>
    public required IReadOnlyList<OutcomeMove> Outcomes { get; init; }

    /// <summary>All findings.</summary>
    public required ChangeCounts Findings { get; init; }

    /// <summary>Findings by outcome: that of the candidate, or, where the finding is gone, that of the rules in force.</summary>
    public required IReadOnlyList<ChangeTally> Severities { get; init; }

    /// <summary>Findings by rule, most changes first.</summary>
    public required SummaryTable<ChangeTally> Rules { get; init; }

    /// <summary>Findings by the engineer's licence number, most changes first.</summary>
    public required SummaryTable<ChangeTally> Engineers { get; init; }

    /// <summary>Findings by month of the visit (yyyy-MM), in order.</summary>
    public required SummaryTable<ChangeTally> Months { get; init; }

    /// <summary>By which rules was compared; more than one line where they were changed while the preview ran.</summary>
    public required IReadOnlyList<ComparedRules> RuleSets { get; init; }

    /// <summary>The usual cautions.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}

/// <summary>Evaluations with one overall outcome that would have another, or the same.</summary>
public sealed class OutcomeMove
{
    /// <summary>By the rules in force.</summary>
    public required OverallOutcome Before { get; init; }

    /// <summary>By the candidate.</summary>
    public required OverallOutcome After { get; init; }

    /// <summary>How many evaluations.</summary>
    public required int Evaluations { get; init; }
}

/// <summary>Findings by what becomes of them.</summary>
public sealed class ChangeCounts
{
    /// <summary>The candidate alone finds them.</summary>
    public int New { get; set; }

    /// <summary>Both find them, with another outcome, limit or gap.</summary>
    public int Changed { get; set; }

    /// <summary>The rules in force alone find them.</summary>
    public int Gone { get; set; }

    /// <summary>Both find the same.</summary>
    public int Unchanged { get; set; }

    internal int Changes => New + Changed + Gone;

    internal void Count(ChangeKind kind)
    {
        New += kind == ChangeKind.New ? 1 : 0;
        Changed += kind == ChangeKind.Changed ? 1 : 0;
        Gone += kind == ChangeKind.Gone ? 1 : 0;
        Unchanged += kind == ChangeKind.Unchanged ? 1 : 0;
    }

    internal void Add(ChangeCounts more)
    {
        New += more.New;
        Changed += more.Changed;
        Gone += more.Gone;
        Unchanged += more.Unchanged;
    }
}

/// <summary>Findings of one outcome, rule, engineer or month.</summary>
public sealed class ChangeTally
{
    /// <summary>Which.</summary>
    public required string Key { get; init; }

    /// <summary>How many findings.</summary>
    public required ChangeCounts Counts { get; init; }
}

/// <summary>Two sets of rules, by the hashes of what they demand, and the program that judged by both.</summary>
public sealed class ComparedRules
{
    /// <summary>Law hash of the rules in force.</summary>
    public required string InForce { get; init; }

    /// <summary>Law hash of the candidate's.</summary>
    public required string Candidate { get; init; }

    /// <summary>Code hash of the program; absent in previews of an older version, whose hashes covered it.</summary>
    public string? CodeHash { get; init; }

    /// <summary>How many evaluations were judged by them.</summary>
    public required int Evaluations { get; init; }
}
