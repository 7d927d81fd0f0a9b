using Kernel.Catalogues;

namespace Kernel.Engine;

/// <summary>The cautions that every answer carries.</summary>
internal static class UsualCautions
{
    /// <summary>Those of an answer by the law of a day: one more where it lies long after the rules were last reviewed.</summary>
    public static IReadOnlyList<string> For(RuleSetHeader ruleSet, DateOnly asOf) => ruleSet.IsOldFor(asOf)
        ? [.. ruleSet.Cautions, FormattableString.Invariant($"These rules were last held against the law and the standards on {ruleSet.ReviewedOn:yyyy-MM-dd}. What has changed between then and {asOf:yyyy-MM-dd} is not in them: look it up.")]
        : ruleSet.Cautions;
}
