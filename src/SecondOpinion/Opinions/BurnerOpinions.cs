using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class BurnerOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("burner-condition", Condition),
        ("electrode-gap", c => If(c.IsAnnualService(), "/burner", () => Within(c.Limit("electrode-gap"), c.Record.Burner?.ElectrodeGapMm))),
        ("electrodes-clean", c => If(c.IsAnnualService(), "/burner", () => Yes(c.Record.Burner?.ElectrodesClean))),
    ];

    // A danger that is on the record counts on whatever visit it was seen; with carbon monoxide in the room it is immediate.
    private static IEnumerable<Opinion> Condition(Case c) => c.Record.Burner?.Condition switch
    {
        BurnerCondition.Damaged => c.GravestInRoom(On("/burner", Outcome.Unsafe)),
        var condition => If(c.IsServiced(), "/burner", () => condition is null ? Outcome.Missing : Outcome.Pass),
    };
}
