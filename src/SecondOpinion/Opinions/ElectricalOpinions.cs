using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class ElectricalOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("earth-continuity", Of(Earth)),
        ("fuse-and-isolator", Of(FuseAndIsolator)),
        ("insulation", c => On("/electrical", c.Record.Electrical switch
        {
            { InsulationMegohm: { } measured } => Within(c.Limit("insulation-resistance"), measured),
            { PolarityOk: not null, EarthOk: not null } => Outcome.Pass,
            _ => Outcome.Missing,
        })),
        ("main-bonding", Of((_, wiring) => Yes(wiring.MainBonding))),
        ("polarity", Of((_, wiring) => Yes(wiring.PolarityOk, no: Outcome.Unsafe))),
        ("safe-isolation", c => If(c.IsServiced(), () => Of((_, wiring) => Yes(wiring.IsolatedSafely))(c))),
    ];

    private static Func<Case, IEnumerable<Opinion>> Of(Func<Case, Electrical, Outcome> judge) =>
        c => On("/electrical", judge(c, c.Record.Electrical ?? new Electrical()));

    // With 30 mA through more than 1,667 ohm the case stays above 50 V: no earth, ticked or not.
    private static Outcome Earth(Case c, Electrical wiring) => wiring.EarthOhm > 1667 ? Outcome.Unsafe
        : wiring is { EarthOk: true, EarthOhm: { } measured } ? Within(c.Limit("earth-continuity"), measured) : Yes(wiring.EarthOk, no: Outcome.Unsafe);

    private static Outcome FuseAndIsolator(Case c, Electrical wiring) => Lacks(wiring.FuseAmps, wiring.DoublePoleIsolation)
        ? Outcome.Missing
        : Pass(c.Limit("fuse-rating")!.Holds(wiring.FuseAmps!.Value) && wiring.DoublePoleIsolation == true);
}
