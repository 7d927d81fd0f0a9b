using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>Carbon monoxide in the room: before anything is touched, while the boiler runs, and at the final sweep.</summary>
internal static class AmbientAirOpinions
{
    private const string Room = "/ambientCo";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("ambient-co-before", one => [Before(one)]),
        ("ambient-co-running", one => [Running(one)]),
        ("ambient-co-after", one => [After(one)]),
        ("raised-room-air-ventilated", one => [Ventilated(one)]),
    ];

    private static Opinion Before(Case one) => one.Record.AmbientCo?.BeforePpm switch
    {
        null => Missing(Room),
        > 30 => Dangerous(Room),
        >= 10 => Advisory(Room),
        var before => Pass(Room).IfSure(Sureness.OfAnalyser(one, "beforePpm", before), before.Value, null, 10),
    };

    private static Opinion Running(Case one) => Rise(one.Record.AmbientCo?.BeforePpm, one.Record.AmbientCo?.RunningPeakPpm)
        .IfSure(Sureness.OfAnalyser(one, "runningPeakPpm", one.Record.AmbientCo?.RunningPeakPpm), one.Record.AmbientCo?.RunningPeakPpm ?? 0, null, 10);

    /// <summary>Still rising at the end, products come into the room; else what counts is the rise over the cold boiler's air.</summary>
    private static Opinion After(Case one) => one.Record.AmbientCo switch
    {
        { AfterPpm: <= 30 and { } after, RunningPeakPpm: { } peak, BeforePpm: var before } when after > peak && (after - peak > 3 || after - before > 3) => Dangerous(Room),
        { AfterPpm: > 30 } => Dangerous(Room),
        { RunningPeakPpm: null, AfterPpm: < 10 } => Missing(Room),
        { AfterPpm: >= 10 } air => Rise(air.BeforePpm, air.AfterPpm),
        { AfterPpm: { } after } => Pass(Room).IfSure(Sureness.OfAnalyser(one, "afterPpm", after), after, null, 10),
        _ => Missing(Room),
    };

    /// <summary>More than 3 ppm up is the boiler's; where that comes to 10 ppm, products are in the room.</summary>
    private static Opinion Rise(decimal? from, decimal? to) => (from, to) switch
    {
        (_, null) => Missing(Room),
        (_, > 30) => Dangerous(Room),
        (null, >= 10) => AtRisk(Room),
        (null, _) => Missing(Room),
        var (a, b) when b - a > 3 => b >= 10 ? Dangerous(Room) : Advisory(Room),
        ( < 10, >= 10) => AtRisk(Room),
        (_, >= 10) => Advisory(Room),
        _ => Pass(Room),
    };

    private static Opinion Ventilated(Case one)
    {
        var air = one.Record.AmbientCo;
        decimal?[] sweeps = [air?.BeforePpm, air?.RunningPeakPpm, air?.AfterPpm];
        if (sweeps.Any(ppm => ppm >= 10))
            return Yes(air!.Ventilated, Advisory(Room));
        return sweeps.Contains(null) ? Missing() : NotApplicable();
    }
}
