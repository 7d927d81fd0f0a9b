namespace Findings;

/// <summary>
/// How single outcomes combine into the record's outcome: unsafe before incomplete before advisory before pass; the first that applies.
/// </summary>
public static class Outcomes
{
    /// <summary>What <paramref name="counts"/> say of the whole record.</summary>
    /// <param name="counts">The answers by outcome. A record for which no rule passed is never a pass.</param>
    /// <param name="isAnythingAsked">Whether anything is asked for, that must be there, be it by a finding that is an advisory for the time being.</param>
    public static OverallOutcome Combine(OutcomeCounts counts, bool isAnythingAsked)
    {
        ArgumentNullException.ThrowIfNull(counts);
        return counts switch
        {
            { Unsafe: > 0 } => OverallOutcome.Unsafe,
            { Missing: > 0 } or { Error: > 0 } or { Pass: 0 } => OverallOutcome.Incomplete,
            _ when isAnythingAsked => OverallOutcome.Incomplete,
            { Advisory: > 0 } or { NotLookedAt: > 0 } => OverallOutcome.Advisory,
            _ => OverallOutcome.Pass,
        };
    }
}

/// <summary>How many answers of each outcome an evaluation holds: one for each rule in force and each of its subjects.</summary>
public sealed class OutcomeCounts
{
    /// <summary>Rules satisfied.</summary>
    public int Pass { get; init; }

    /// <summary>Advisory findings.</summary>
    public int Advisory { get; init; }

    /// <summary>Unsafe findings.</summary>
    public int Unsafe { get; init; }

    /// <summary>Answers for which evidence is missing that must be there.</summary>
    public int Missing { get; init; }

    /// <summary>Answers for which evidence is missing that should be there.</summary>
    public int NotLookedAt { get; init; }

    /// <summary>Rules that do not concern this visit.</summary>
    public int NotApplicable { get; init; }

    /// <summary>Rules that failed to run.</summary>
    public int Error { get; init; }

    /// <summary>Counts <paramref name="findings"/>.</summary>
    public static OutcomeCounts Of(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var counts = new int[Enum.GetValues<Outcome>().Length];
        var notLookedAt = 0;
        foreach (var finding in findings)
        {
            if (finding is { Outcome: Outcome.Missing, Weight: Weight.Should })
                notLookedAt++;
            else
                counts[(int)finding.Outcome]++;
        }

        return new OutcomeCounts
        {
            Pass = counts[(int)Outcome.Pass],
            Advisory = counts[(int)Outcome.Advisory],
            Unsafe = counts[(int)Outcome.Unsafe],
            Missing = counts[(int)Outcome.Missing],
            NotLookedAt = notLookedAt,
            NotApplicable = counts[(int)Outcome.NotApplicable],
            Error = counts[(int)Outcome.Error],
        };
    }
}
