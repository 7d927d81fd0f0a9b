using Findings;

namespace Kernel.Engine;

/// <summary>Compares two evaluations of one record under the law of two days.</summary>
internal static class LawOutlook
{
    public static NextChange None { get; } = new() { What = [], Findings = [] };

    public static NextChange Of(DateOnly on, IReadOnlyList<LawChange> what, Evaluation before, Evaluation after) => new()
    {
        On = on,
        What = what,
        Outcome = after.Outcome,
        Findings = [.. Differences(before.Findings, after.Findings)],
    };

    private static IEnumerable<ChangedAnswer> Differences(IReadOnlyList<Finding> before, IReadOnlyList<Finding> after)
    {
        var then = after.ToLookup(Key);
        var now = before.ToLookup(Key);
        return now.Concat(then).Select(answers => answers.Key).Distinct()
            .Where(key => now[key].Concat(then[key]).Any(Concerns) && !now[key].Select(Said).SequenceEqual(then[key].Select(Said)))
            .Select(key => new ChangedAnswer
            {
                RuleId = key.RuleId,
                Subject = key.Subject,
                Before = now[key].FirstOrDefault()?.Outcome,
                After = then[key].FirstOrDefault()?.Outcome,
                Message = then[key].Concat(now[key]).First().Message,
            });
    }

    /// <summary>A rule that begins and does not concern the visit makes no difference to it.</summary>
    private static bool Concerns(Finding finding) => finding.Outcome != Outcome.NotApplicable;

    private static (string RuleId, string Subject) Key(Finding finding) => (finding.RuleId, finding.Subject);

    private static (Outcome, string?, decimal?, decimal?) Said(Finding finding) => (finding.Outcome, finding.Message, finding.Limit?.Min, finding.Limit?.Max);
}
