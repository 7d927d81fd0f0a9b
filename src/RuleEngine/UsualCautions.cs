namespace RuleEngine;

/// <summary>The cautions that every answer carries.</summary>
public static class UsualCautions
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "This says what the record shows. It does not say that the boiler is safe; that judgement is the registered engineer's on site.",
        "The maker's instructions and the law and codes in force where the boiler stands come before any limit shown here.",
        "Work on gas, flue and combustion parts is for a person registered and competent for this fuel and this appliance.",
        "Anyone who smells gas or suspects carbon monoxide: turn the gas off, let air in, leave, and call the gas emergency provider.",
    ];

    /// <summary>Those of an answer by the law of a day: one more where it lies long after the rules were last reviewed.</summary>
    internal static IReadOnlyList<string> For(RuleSetHeader ruleSet, DateOnly asOf) => ruleSet.IsOldFor(asOf)
        ? [.. All, FormattableString.Invariant($"These rules were last held against the law and the standards on {ruleSet.ReviewedOn:yyyy-MM-dd}. What has changed between then and {asOf:yyyy-MM-dd} is not in them: look it up.")]
        : All;
}
