using Findings;

namespace RuleEngine.Tests;

/// <summary>Answers in a form that compares.</summary>
internal static class Answers
{
    public static IReadOnlyList<string> Of(Evaluation evaluation, Func<Finding, bool>? only = null) =>
    [
        .. evaluation.Findings.Where(only ?? (_ => true))
            .Select(finding => $"{finding.RuleId} {finding.Subject} {finding.Outcome} {finding.Message}"),
    ];
}
