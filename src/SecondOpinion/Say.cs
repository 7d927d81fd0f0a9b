using Findings;

namespace SecondOpinion;

/// <summary>
/// Short words for opinions. A rule that does not concern the visit says so of the whole visit, and so does one that cannot tell whether
/// it does; a rule on the items of a list asks for the list where that is absent; every other answer is about the place that is judged.
/// </summary>
internal static class Say
{
    public const string Visit = "";

    public static Opinion Pass(string subject = Visit) => new(subject, Outcome.Pass);

    public static Opinion Advisory(string subject = Visit) => new(subject, Outcome.Advisory);

    public static Opinion Missing(string subject = Visit) => new(subject, Outcome.Missing);

    public static Opinion NotApplicable(string subject = Visit) => new(subject, Outcome.NotApplicable);

    public static Opinion AtRisk(string subject = Visit) => new(subject, Outcome.Unsafe, ExpectedClass.AtRisk);

    public static Opinion Dangerous(string subject = Visit) => new(subject, Outcome.Unsafe, ExpectedClass.ImmediatelyDangerous);

    /// <summary>Yes: pass; no: <paramref name="no"/>; not recorded: missing.</summary>
    public static Opinion Yes(bool? answer, Opinion no) => answer switch
    {
        true => Pass(no.Subject),
        false => no,
        null => Missing(no.Subject),
    };

    /// <summary>One opinion for each item; the list absent: missing at the list; empty: not applicable.</summary>
    public static IEnumerable<Opinion> Each<T>(string list, IReadOnlyList<T>? items, Func<T, string, Opinion> say) => items switch
    {
        null => [Missing(list)],
        [] => [NotApplicable()],
        _ => items.Select((item, index) => say(item, $"{list}/{index}")),
    };
}
