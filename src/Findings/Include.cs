namespace Findings;

/// <summary>How much of an evaluation is shown.</summary>
public enum Include
{
    /// <summary>What needs attention: unsafe findings, advisories and rules that failed in full, those that lack evidence as rows; questions, duties and figures in few words. Passes, and what does not apply or was not looked at, are counted.</summary>
    Problems,

    /// <summary>The same, with passes and what was not looked at as rows; those that a loosened limit let pass in full.</summary>
    Passes,

    /// <summary>Every answer in full, with what it rests on and how each figure was worked out.</summary>
    All,
}

/// <summary>Cuts an evaluation to what is asked for. Counts and hashes stay those of the whole.</summary>
public static class EvaluationView
{
    /// <summary>The part of <paramref name="evaluation"/> that <paramref name="include"/> names, with every finding that is no pass in full.</summary>
    public static Evaluation Show(this Evaluation evaluation, Include include)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        return include switch
        {
            Include.All => evaluation,
            _ => evaluation with { Findings = Cut(evaluation.Findings, withPasses: include == Include.Passes) },
        };
    }

    /// <summary>
    /// The same as it is answered, for <see cref="ShortJson"/> to write: what a finding for lack of evidence says stands in the questions
    /// already, so that it is a row; where closing does not wait for the evidence the question is all, unless passes are shown as well.
    /// </summary>
    public static Evaluation InShort(this Evaluation evaluation, Include include)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        return include == Include.All ? evaluation : evaluation with
        {
            Findings = [.. evaluation.Show(include).Findings
                .Where(finding => include == Include.Passes || finding is not { Outcome: Outcome.Missing, Weight: Weight.Should })
                .Select(finding => finding.Outcome == Outcome.Missing ? finding.InShort() : finding)],
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
