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
        ("temporary-bond", c => If(c.Record.Electrical?.TemporaryBondUsed is not null || PartedAPipe(c), "/electrical/temporaryBondUsed",
            () => Agrees(c.Record.Electrical?.TemporaryBondUsed == true))),
    ];

    private static bool PartedAPipe(Case c) => c.Record.Work?.Kind is WorkKind.MeterWork or WorkKind.Pipework or WorkKind.Removal
        || c.Record.PartsFitted?.Any(part => part.Kind is PartKind.Meter or PartKind.Pipework) == true;

    private static Func<Case, IEnumerable<Opinion>> Of(Func<Case, Electrical, Outcome> judge) =>
        c => On("/electrical", judge(c, c.Record.Electrical ?? new Electrical()));

    // A path from the boiler to the main earth, not an electrode: above 200 ohm there is none, ticked or not, and from 16 ohm on (a 3 A
    // fuse; from memory) a tick alone does not say that there is.
    private static Outcome Earth(Case c, Electrical wiring) => wiring switch
    {
        { EarthOk: false } => Outcome.Unsafe,
        { EarthOhm: { } path } when !c.Limit("earth-path-unsafe")!.Holds(path) => Outcome.Unsafe,
        { EarthOhm: { } path } when !c.Limit("earth-path-doubtful")!.Holds(path) =>
            c.Record.Defects?.Any(defect => defect.IsOf(Topics.Electrical, "/electrical")) == true ? Outcome.Advisory : Outcome.Missing,
        { EarthOk: null } => Outcome.Missing,
        _ => wiring.EarthOhm is { } measured ? Within(c.Limit("earth-continuity"), measured) : Outcome.Pass,
    };

    private static Outcome FuseAndIsolator(Case c, Electrical wiring) => Lacks(wiring.FuseAmps, wiring.DoublePoleIsolation)
        ? Outcome.Missing
        : Pass(c.Limit("fuse-rating")!.Holds(wiring.FuseAmps!.Value) && wiring.DoublePoleIsolation == true);
}
