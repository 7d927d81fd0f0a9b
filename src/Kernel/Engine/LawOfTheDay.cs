using Findings;
using Kernel.Catalogues;

namespace Kernel.Engine;

/// <summary>
/// What is said where the rules do not know the law by which a record is to be judged. No rule can say it: each would judge by what it
/// knows, as if that had been law for ever.
/// </summary>
internal sealed class LawOfTheDay : IRuleText
{
    private static readonly LawOfTheDay Text = new();

    private LawOfTheDay()
    {
    }

    public string RuleId => "law-of-the-day-known";

    public string Topic => Topics.Plausibility;

    public string Title => "The rules know the law of the day by which the record is judged";

    public IReadOnlyList<Reference>? References => null;

    public string? Documentation => null;

    /// <summary>The row that holds the record at incomplete; null where the law is known.</summary>
    public static Finding? Unknown(RuleSetHeader ruleSet, DateOnly asOf)
    {
        if (asOf >= ruleSet.KnownFrom)
            return null;
        var verdict = Verdict.Error($"these rules do not hold the law of {asOf}, only that from {ruleSet.KnownFrom} on, so nothing they say here is a pass");
        return new Finding(Text, "", verdict.Outcome, verdict);
    }
}
