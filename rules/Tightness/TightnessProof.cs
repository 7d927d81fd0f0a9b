using Findings;
using RuleModel;

namespace Rules;

/// <summary>What a tightness test is worth as proof.</summary>
internal static class TightnessProof
{
    private static readonly IReadOnlyList<TightnessTestRule> Conditions =
    [
        new TightnessTestDateRule(), new TightnessScopeRule(), new LetByTestRule(),
        new TightnessPressureRule(), new TightnessMinutesRule(), new TightnessGaugeRule(),
    ];

    private static readonly TightnessResultRule Result = new();

    /// <summary>Pointers of what keeps the test at a pointer from counting, whatever the gauge showed: absent members, and members that void it.</summary>
    public static IReadOnlyList<string> ObjectionsTo(string test, Visit visit) =>
        [.. Conditions.SelectMany(rule => rule.VerdictOn(test, visit).Missing).Distinct(StringComparer.Ordinal)];

    /// <summary>
    /// Does the test at a pointer, one made after the work, show the installation tight? False: it failed or is void. Null: the record does not say enough, and
    /// <paramref name="gaps"/> says what is absent.
    /// </summary>
    public static bool? ShowsTight(string test, Visit visit, ICollection<string> gaps)
    {
        var verdict = Result.VerdictOn(test, visit);
        if (!verdict.IsProblem || verdict.Outcome == Outcome.Advisory)
            return true;
        var open = verdict.Missing.Union(ObjectionsTo(test, visit), StringComparer.Ordinal).ToList();
        if (verdict.Outcome != Outcome.Missing || !open.All(visit.Lacks))
            return false;

        foreach (var pointer in open)
            gaps.Add(pointer);
        return null;
    }
}
