using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class CondensateOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("condensate-fall", Of((c, drain) => drain.FallMmPerM is { } fall ? Within(c.Limit("condensate-fall"), fall) : Yes(drain.SeenRunning))),
        ("condensate-pipe", Of(Pipe)),
        ("condensate-running", Of((_, drain) => Yes(drain.SeenRunning))),
        ("trap-cleaned", c => If(c.IsAnnualService(), () => Of((_, drain) => Yes(drain.TrapCleaned))(c))),
        ("trap-refilled", c => c.GravestInRoom(c.Record.Condensate?.TrapRefilled == false
            ? On("/condensate", DryTrap(c))
            : If(c.Record.Appliance.Condensing, "/condensate", () => Yes(c.Record.Condensate?.TrapRefilled)))),
    ];

    private static Func<Case, IEnumerable<Opinion>> Of(Func<Case, Condensate, Outcome> judge) =>
        c => If(c.Record.Appliance.Condensing, "/condensate", () => judge(c, c.Record.Condensate ?? new Condensate()));

    // Seen dry by somebody, there is one; that there should be none cannot be true as well.
    private static Outcome DryTrap(Case c) => c.Record.Appliance.Condensing == false ? Outcome.Missing : Outcome.Unsafe;

    private static Outcome Pipe(Case c, Condensate drain) => (drain.PipeInternalDiameterMm, drain.RunsOutside, drain.Insulated) switch
    {
        (null, _, _) or (_, null, _) => Outcome.Missing,
        (var width, false, _) => Within(c.Limit("condensate-pipe-inside"), width),
        (var width, true, var insulated) => c.Limit("condensate-pipe-outside")!.Holds(width.Value) ? Pass(insulated == true) : Outcome.Advisory,
    };
}
