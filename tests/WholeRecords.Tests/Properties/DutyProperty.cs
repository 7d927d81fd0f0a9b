namespace WholeRecords.Tests.Properties;

/// <summary>5. Every must duty of every record has an answer.</summary>
internal sealed class DutyProperty : IProperty
{
    public static readonly Claim Silent = new("5a", "Every must duty is met, missing, bad, deferred, byReason or contradicted: none silent.");
    public static readonly Claim Asked = new("5b", "What an auditor must ask for is asked as must, or stands in a rule's way.");

    private static readonly HashSet<string> States = new(["met", "missing", "bad", "deferred", "byReason", "contradicted"], StringComparer.Ordinal);

    public IReadOnlyList<Claim> Claims { get; } = [Silent, Asked];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        if (one.Said.Duties is not { } duties)
            yield break;
        asked(Silent);
        foreach (var duty in duties.Where(duty => duty.Weight == "must" && (duty.State is null || !States.Contains(duty.State))))
            yield return Counterexample.OfItself(Silent, $"{duty.Kind} silent", one);
        foreach (var pointer in one.Whole?.Asks ?? [])
        {
            asked(Asked);
            if (!one.Said.Missing.Any(item => item.Weight != "should" && IsAt(item.Pointer, pointer)))
                yield return Counterexample.OfItself(Asked, $"{pointer} not asked", one);
        }
    }

    private static bool IsAt(string asked, string wanted) =>
        asked.TrimStart('#') is var place && wanted.TrimStart('#') is var want && (place == want || place.StartsWith(want + "/", StringComparison.Ordinal));
}
