using Findings;

namespace SecondOpinion.Opinions;

/// <summary>The few forms that nearly every opinion takes.</summary>
internal static class Reply
{
    private static readonly Opinion[] DoesNotConcern = [new("", Outcome.NotApplicable)];
    private static readonly Opinion[] NobodyWroteWhether = [new("", Outcome.Missing)];

    /// <summary>One answer about one subject; what is unsafe is at risk unless told otherwise.</summary>
    public static IEnumerable<Opinion> On(string subject, Outcome outcome) => [Of(subject, outcome)];

    /// <summary>The same answers, where what is unsafe is immediately dangerous.</summary>
    public static IEnumerable<Opinion> Immediately(IEnumerable<Opinion> answers) =>
        answers.Select(answer => answer.Class is null ? answer : answer with { Class = ExpectedClass.ImmediatelyDangerous });

    /// <summary>Says nothing before the rule's first day.</summary>
    public static Func<Case, IEnumerable<Opinion>> Since(int year, int month, int day, Func<Case, IEnumerable<Opinion>> say) =>
        c => c.AsOf >= new DateOnly(year, month, day) ? say(c) : [];

    /// <summary>One answer about one subject, if the rule concerns the visit; unknown whether it does is missing.</summary>
    public static IEnumerable<Opinion> If(bool? concerns, string subject, Func<Outcome> outcome) =>
        If(concerns, () => On(subject, outcome()));

    /// <summary>Some answers, if the rule concerns the visit; unknown whether it does is missing.</summary>
    public static IEnumerable<Opinion> If(bool? concerns, Func<IEnumerable<Opinion>> answers) => concerns switch
    {
        true => answers(),
        false => DoesNotConcern,
        null => NobodyWroteWhether,
    };

    /// <summary>One answer about one subject, which says of itself where it has nothing to judge.</summary>
    public static IEnumerable<Opinion> At(string subject, bool concerns, Func<Outcome> outcome) => On(subject, concerns ? outcome() : Outcome.NotApplicable);

    /// <summary>Passes, or asks again.</summary>
    public static Outcome Agrees(bool agrees) => agrees ? Outcome.Pass : Outcome.Missing;

    /// <summary>An answer for each item; a null outcome leaves the item out, and with none left the rule has nothing to judge.</summary>
    public static IEnumerable<Opinion> Each<T>(IReadOnlyList<T>? items, string pointer, Func<T, Outcome?> outcome, Outcome whenNone = Outcome.NotApplicable) =>
        Each(items, pointer, (item, _) => outcome(item), whenNone);

    /// <summary>The same, told the item's place.</summary>
    public static IEnumerable<Opinion> Each<T>(IReadOnlyList<T>? items, string pointer, Func<T, int, Outcome?> outcome, Outcome whenNone = Outcome.NotApplicable)
    {
        if (items is null)
            return On(pointer, Outcome.Missing);

        var answers = items.Index()
            .Select(place => (place.Index, Outcome: outcome(place.Item, place.Index)))
            .Where(answer => answer.Outcome is not null)
            .Select(answer => Of($"{pointer}/{answer.Index}", answer.Outcome!.Value))
            .ToList();
        return answers.Count > 0 ? answers : On("", whenNone);
    }

    /// <summary>Yes passes, no is as told, unsaid is missing.</summary>
    public static Outcome Yes(bool? said, Outcome no = Outcome.Advisory) => said switch
    {
        true => Outcome.Pass,
        false => no,
        null => Outcome.Missing,
    };

    /// <summary>Passes or advises.</summary>
    public static Outcome Pass(bool ok) => ok ? Outcome.Pass : Outcome.Advisory;

    /// <summary>Passes or advises by a limit; unmeasured is missing.</summary>
    public static Outcome Within(Bounds? limit, decimal? value) => value is { } number ? Pass(limit!.Holds(number)) : Outcome.Missing;

    /// <summary>Is any of them absent?</summary>
    public static bool Lacks(params ReadOnlySpan<object?> values) => values.Contains(null);

    /// <summary>Is there a text?</summary>
    public static bool Given(string? text) => !string.IsNullOrWhiteSpace(text);

    private static Opinion Of(string subject, Outcome outcome) => new(subject, outcome, outcome == Outcome.Unsafe ? ExpectedClass.AtRisk : null);

    /// <summary>Both, where either may be unknown.</summary>
    public static bool? And(bool? one, bool? other) => one == false || other == false ? false : one & other;
}
