using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class BurnerOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("burner-condition", Condition),
        ("electrode-gap", c => On("/burner", Within(MakersGap(c.Record.MakerLimits) ?? c.Limit("electrode-gap"), c.Record.Burner?.ElectrodeGapMm))),
        ("electrodes-clean", c => On("/burner", Yes(c.Record.Burner?.ElectrodesClean))),
    ];

    // With carbon monoxide in the room a damaged burner is an immediate danger.
    private static IEnumerable<Opinion> Condition(Case c) => c.GravestInRoom(On("/burner", c.Record.Burner?.Condition switch
    {
        null => Outcome.Missing,
        BurnerCondition.Damaged => Outcome.Unsafe,
        _ => Outcome.Pass,
    }));

    // What the maker gives, both ends of it and where it stands, goes before what is usual.
    private static Bounds? MakersGap(MakerLimits? makers) =>
        makers is { ElectrodeGapMmMin: { } least, ElectrodeGapMmMax: { } most } && Given(makers.Source) ? new(least, most, MaxExcluded: false, 0.1m) : null;
}
