using Findings;

namespace Kernel.Tests;

/// <summary>Answers in a form that compares.</summary>
internal static class Answers
{
    public static IReadOnlyList<string> Of(Evaluation evaluation, Func<Finding, bool>? only = null) => Of(evaluation.Findings, only);

    public static IReadOnlyList<string> Of(IEnumerable<Finding> findings, Func<Finding, bool>? only = null) =>
    [
        .. findings.Where(only ?? (_ => true))
            .Select(finding => $"{finding.RuleId} {finding.Subject} {finding.Outcome} {finding.Message}"),
    ];
}
