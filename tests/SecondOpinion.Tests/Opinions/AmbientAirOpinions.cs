using static SecondOpinion.Tests.Say;

namespace SecondOpinion.Tests;

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
        _ => Pass(Room),
    };

    private static Opinion Running(Case one) =>
        Rise(one.Record.AmbientCo?.BeforePpm, one.Record.AmbientCo?.RunningPeakPpm, keepsRising: false);

    private static Opinion After(Case one) =>
        Rise(one.Record.AmbientCo?.RunningPeakPpm, one.Record.AmbientCo?.AfterPpm, keepsRising: true);

    /// <summary>More than 3 ppm up is the boiler's; where that goes on or comes to 10 ppm, products are in the room.</summary>
    private static Opinion Rise(decimal? from, decimal? to, bool keepsRising) => (from, to) switch
    {
        (_, null) => Missing(Room),
        (_, > 30) => Dangerous(Room),
        (null, >= 10) => AtRisk(Room),
        (null, _) => Missing(Room),
        var (a, b) when b - a > 3 => keepsRising || b >= 10 ? Dangerous(Room) : Advisory(Room),
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
