using Records;

namespace SecondOpinion.Duties;

/// <summary>Carbon monoxide in the room, before and while the boiler runs.</summary>
internal static class RoomSweep
{
    /// <summary>More than a sweep's own scatter, in ppm. Common practice, no source.</summary>
    public const decimal Scatter = 3;

    /// <summary>From here on air counts as raised, in ppm.</summary>
    public const decimal Raised = 10;

    public static bool IsWithoutRise(AmbientCo? air) =>
        air is { RunningPeakPpm: { } peak } && Before(air) is { } before && peak - before <= Scatter && peak < Raised && !(air.AfterPpm - before > Scatter);

    /// <summary>The air against which a rise is judged: once aired, that.</summary>
    public static decimal? Before(AmbientCo air) => air.AfterAiringPpm ?? air.BeforePpm;
}
