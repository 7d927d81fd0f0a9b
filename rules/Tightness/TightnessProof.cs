using Findings;
using Records;
using Visits;

namespace Rules.Tightness;

/// <summary>What a tightness test is worth as proof.</summary>
internal static class TightnessProof
{
    private static readonly IReadOnlyList<TightnessTestRule> Conditions =
    [
        new TightnessTestDateRule(), new TightnessScopeRule(), new LetByTestRule(),
        new TightnessPressureRule(), new TightnessMinutesRule(), new TightnessGaugeRule(),
    ];

    private static readonly TightnessResultRule Result = new();
    private static readonly LeakFoundBeforeWorkRule FoundBefore = new();

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
        if (!verdict.IsProblem || verdict is { Outcome: Outcome.Advisory, WasPutRight: false })
            return true;
        var open = verdict.Missing.Union(ObjectionsTo(test, visit), StringComparer.Ordinal).ToList();
        if (verdict.Outcome != Outcome.Missing || !open.All(visit.Lacks))
            return false;

        foreach (var pointer in open)
            gaps.Add(pointer);
        return null;
    }

    /// <summary>Did a later test see at least what an earlier one saw: the appliances, and what lies behind their valves?</summary>
    public static bool SawAsMuch(TightnessTest later, TightnessTest first) =>
        (first.AppliancesConnected == false || later.AppliancesConnected == true)
        && (first.ApplianceValvesOpen != true || later.ApplianceValvesOpen == true);

    /// <summary>
    /// Does a test after the work, later than the one at a pointer, show the installation tight, and did it see as much? Tests carry a day
    /// and no time, so those of one day stand in the order of the list.
    /// </summary>
    public static bool IsFollowedByATightTest(string pointer, Visit visit)
    {
        var tests = visit.TightnessTests!;
        var place = tests.Index().Single(test => test.Item.Pointer == pointer).Index;
        var first = tests[place].Value;
        return tests.Index().Any(test => test.Item.Value is { Stage: WorkStage.AfterWork } later
            && (TightnessEditions.DayOf(later, visit), test.Index).CompareTo((TightnessEditions.DayOf(first, visit), place)) > 0
            && SawAsMuch(later, first)
            && TightnessResultRule.WhatItProves(later, visit, Visit.LookAt(test.Item.Pointer)).Outcome is Outcome.Pass or Outcome.Advisory);
    }

    /// <summary>A leak that a test showed, before the work or after it, and that no later test that counts takes back.</summary>
    public static bool LeakStands(Visit visit)
    {
        var stands = visit.Judgements.ReliedOn(FoundBefore).Any(answer => answer.Verdict.Outcome == Outcome.Unsafe)
            || visit.Judgements.ReliedOn(Result).Any(answer => answer.Verdict.Outcome == Outcome.Unsafe && !IsFollowedByATightTest(answer.Subject, visit));

        // Of a test that shows no leak by itself the fuel settles what it shows.
        if (!stands && visit.TightnessTests is { Count: > 0 })
            _ = visit.Fuel;
        return stands;
    }
}
