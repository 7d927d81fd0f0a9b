namespace Findings;

/// <summary>How much of an evaluation is shown.</summary>
public enum Include
{
    /// <summary>Findings in full, passes as short rows unless a loosened limit let them pass, what does not apply only counted.</summary>
    Default,

    /// <summary>Every answer in full.</summary>
    All,

    /// <summary>Only findings; passes and what does not apply are counted.</summary>
    Problems,
}

/// <summary>Cuts an evaluation to what is asked for. Counts and hashes stay those of the whole.</summary>
public static class EvaluationView
{
    /// <summary>The part of <paramref name="evaluation"/> that <paramref name="include"/> asks for.</summary>
    public static Evaluation Show(this Evaluation evaluation, Include include)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        return include switch
        {
            Include.All => evaluation,
            Include.Problems => evaluation with { Findings = Cut(evaluation.Findings, withPasses: false) },
            _ => evaluation with { Findings = Cut(evaluation.Findings, withPasses: true) },
        };
    }

    private static List<Finding> Cut(IReadOnlyList<Finding> findings, bool withPasses)
    {
        var cut = new List<Finding>();
        foreach (var finding in findings)
        {
            if (finding.IsProblem)
                cut.Add(finding);
            else if (withPasses && finding.Outcome == Outcome.Pass)
                cut.Add(finding.Loosened == true ? finding : finding.InShort());
        }

        return cut;
    }
}
