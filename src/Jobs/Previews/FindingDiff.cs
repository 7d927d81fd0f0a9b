using Findings;

namespace Jobs.Previews;

/// <summary>
/// Compares what two sets of rules find in one record. What counts is what is found: outcome, subject, the numbers of the limit, what is
/// missing. Words, sources and names do not, so that a change which only renames things changes nothing.
/// </summary>
internal static class FindingDiff
{
    /// <summary>What becomes of each finding. Passes, and rules that do not concern the visit, are no findings.</summary>
    public static IEnumerable<FindingChange> Between(IReadOnlyList<Finding> before, IReadOnlyList<Finding> after)
    {
        var then = after.Where(IsFinding).ToLookup(KeyOf);
        var now = before.Where(IsFinding).ToLookup(KeyOf);
        return now.Concat(then).Select(findings => findings.Key).Distinct().SelectMany(key => Between([.. now[key]], [.. then[key]]));
    }

    /// <summary>Of one rule about one subject: equal ones stay, the others are taken in their order.</summary>
    private static IEnumerable<FindingChange> Between(List<Finding> before, List<Finding> after)
    {
        foreach (var found in before.ToList())
        {
            var place = after.FindIndex(other => Said(other).Equals(Said(found)));
            if (place < 0)
                continue;
            yield return new FindingChange(ChangeKind.Unchanged, found, after[place]);
            before.Remove(found);
            after.RemoveAt(place);
        }

        for (var i = 0; i < Math.Max(before.Count, after.Count); i++)
        {
            var (was, becomes) = (before.ElementAtOrDefault(i), after.ElementAtOrDefault(i));
            yield return new FindingChange(was is null ? ChangeKind.New : becomes is null ? ChangeKind.Gone : ChangeKind.Changed, was, becomes);
        }
    }

    private static bool IsFinding(Finding finding) => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable);

    private static (string RuleId, string Subject) KeyOf(Finding finding) => (finding.RuleId, finding.Subject);

    private static object Said(Finding finding) =>
    (
        finding.Outcome, finding.ExpectedClass, finding.Loosened, finding.Margin, finding.Conformity,
        (finding.Limit?.Min, finding.Limit?.Max, finding.Limit?.MaxExcluded, finding.Limit?.Unit),
        string.Join(' ', (finding.Evidence ?? []).Select(evidence => $"{evidence.Pointer}={evidence.Value}"))
    );
}

/// <summary>What becomes of one finding.</summary>
/// <param name="Kind">What becomes of it.</param>
/// <param name="Before">As the rules in force find it.</param>
/// <param name="After">As the candidate finds it.</param>
internal sealed record FindingChange(ChangeKind Kind, Finding? Before, Finding? After)
{
    /// <summary>The finding itself: as it becomes, or as it was.</summary>
    public Finding Shown => After ?? Before!;
}
