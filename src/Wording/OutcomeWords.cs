using Findings;
using Wire;

namespace Wording;

/// <summary>What outcomes are called on the pages. A word goes with every mark, and the words are those of the JSON.</summary>
public static class OutcomeWords
{
    /// <summary>The name under which the style and the marks know it.</summary>
    public static string Mark(Outcome outcome) => WireNames.Of(outcome);

    /// <summary>A whole record wears the mark of what made it so.</summary>
    public static string Mark(OverallOutcome outcome) => outcome switch
    {
        OverallOutcome.Incomplete => "missing",
        _ => WireNames.Of(outcome),
    };

    /// <summary>One word or two.</summary>
    public static string Of(Outcome outcome) => outcome switch
    {
        Outcome.Error => "Rule failed",
        Outcome.NotApplicable => "Does not apply",
        _ => outcome.ToString(),
    };

    /// <summary>The same of a row of findings, by its name in JSON.</summary>
    public static string OfRow(string outcome) => outcome switch
    {
        "error" => Of(Outcome.Error),
        _ => Say.Upper(outcome),
    };

    /// <summary>The verdict in words.</summary>
    public static string Verdict(OverallOutcome outcome) => outcome switch
    {
        OverallOutcome.Unsafe => "The record shows a danger, or cannot exclude one.",
        OverallOutcome.Incomplete => "The record does not say enough.",
        OverallOutcome.Advisory => "The record is complete, and there are points to mind.",
        _ => "The record shows what the rules in force demand.",
    };

    /// <summary>Whether the job may be closed, in words.</summary>
    public static string Closing(Closing closing) => closing.Allowed
        ? closing.ClosesAs is { } kind ? $"Nothing in it stands in the way of closing the job as {AsWhat(kind)}." : "Nothing in it stands in the way of closing the job."
        : "The job cannot be closed on this record.";

    /// <summary>As what a job closes, with its article.</summary>
    private static string AsWhat(string kind) => kind == "installation" ? "an installation" : $"a {kind}";

    /// <summary>How far a duty was done. A must of which all is shown but good practice is not a must that is not shown.</summary>
    public static string Of(Duty duty) => duty is { State: DutyState.Missing, Weight: Weight.Must, NotShown: Weight.Should } ? "what must be is shown, good practice is not" : Of(duty.State);

    /// <summary>How far a duty was done.</summary>
    public static string Of(DutyState state) => state switch
    {
        DutyState.Met => "shown",
        DutyState.Deferred => "put off until the boiler is used again",
        DutyState.ByReason => "not done, for a reason",
        DutyState.Missing => "not shown",
        DutyState.Contradicted => "the record says two things of it",
        _ => "not as it must be",
    };

    /// <summary>What became of a danger.</summary>
    public static string Of(DangerState state) => state switch
    {
        DangerState.PutRight => "put right, and looked at again",
        DangerState.TakenOutOfUse => "taken out of use",
        DangerState.LeftByRefusal => "left, since making it safe was refused",
        DangerState.NotExcluded => "cannot be excluded",
        _ => "stands",
    };

    /// <summary>Whether everything was done that dangers call for, in words. That everything was done is not to say that the danger is gone.</summary>
    public static string Situation(Situation situation) => situation.Handled
        ? $"The record shows everything done that {(situation.Dangers.Count == 1 ? "this danger calls" : "these dangers call")} for."
        : $"The record does not show everything done that {(situation.Dangers.Count == 1 ? "this danger calls" : "these dangers call")} for.";

    /// <summary>What silence weighs.</summary>
    public static string Of(Weight weight) => weight == Weight.Must ? "must" : "should";

    /// <summary>The class that the trade's procedure would be expected to give.</summary>
    public static string Class(ExpectedClass expected) => expected switch
    {
        ExpectedClass.ImmediatelyDangerous => "Immediately Dangerous",
        _ => "At Risk",
    };

    /// <summary>Who set a limit.</summary>
    public static string Origin(LimitOrigin origin) => origin switch
    {
        LimitOrigin.Maker => "set by the maker",
        LimitOrigin.Law => "set by law",
        LimitOrigin.Standard => "set by a standard",
        LimitOrigin.CommonPractice => "common practice, no published source",
        _ => "set by the organisation that runs this service",
    };

    /// <summary>How well the figure of a limit is known: "read in law or official guidance on 1 December 2026". Null: a maker's or a deployer's own.</summary>
    public static string Known(LimitStrength? strength, DateOnly? readOn) => strength switch
    {
        null => "as stated by whoever set it",
        LimitStrength.Law => $"read in law or official guidance{On(readOn)}",
        LimitStrength.Publisher => $"read at its publisher{On(readOn)}",
        LimitStrength.Bulletin => $"read in a bulletin{On(readOn)}",
        LimitStrength.Taught => "as taught, not read in its source",
        LimitStrength.Secondary => "not read in its source: from one secondary text, or sources that differ",
        LimitStrength.Memory => "from memory, not read in its source",
        LimitStrength.Derived => "worked out from other figures",
        _ => "a judgement of this service, which no document gives",
    };

    private static string On(DateOnly? day) => day is { } known ? $" on {Say.Day(known)}" : "";

    /// <summary>Where a limit applies: "natural gas; GB-ENG, GB-WLS". Null: everywhere.</summary>
    public static string Where(IReadOnlyList<string>? fuels, IReadOnlyList<string>? jurisdictions) =>
        string.Join("; ", new[] { fuels?.Select(Say.Value), jurisdictions }.OfType<IEnumerable<string>>().Select(some => string.Join(", ", some))) is { Length: > 0 } places
            ? places
            : "everywhere";

    /// <summary>A limit in words.</summary>
    public static string Limit(Limit limit)
    {
        var range = (limit.Min, limit.Max) switch
        {
            ({ } min, { } max) when min == max => "exactly " + Say.Measure(min, limit.Unit),
            ({ } min, { } max) => $"from {Say.Number(min)} to {(limit.MaxExcluded == true ? "below " : "")}{Say.Measure(max, limit.Unit)}",
            ({ } min, null) => "at least " + Say.Measure(min, limit.Unit),
            (null, { } max) => (limit.MaxExcluded == true ? "below " : "at most ") + Say.Measure(max, limit.Unit),
            _ => null,
        };
        return string.Join("; ", new[] { range, limit.Text }.OfType<string>());
    }
}
