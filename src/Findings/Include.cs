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
            Include.Problems => evaluation with { Findings = [.. evaluation.Findings.Where(IsProblem)] },
            _ => evaluation with
            {
                Findings = [.. evaluation.Findings.Where(finding => finding.Outcome != Outcome.NotApplicable).Select(finding => IsProblem(finding) || finding.Loosened == true ? finding : Short(finding))],
            },
        };
    }

    private static bool IsProblem(Finding finding) => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable);

    private static Finding Short(Finding finding) => new()
    {
        RuleId = finding.RuleId,
        Topic = finding.Topic,
        Outcome = finding.Outcome,
        Title = finding.Title,
        Subject = finding.Subject,
    };
}
