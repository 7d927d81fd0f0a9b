using Records.Metadata;

namespace Records;

/// <summary>Carbon monoxide in the room air over the visit.</summary>
public sealed class AmbientCo
{
    /// <summary>Highest value before anything was touched, ppm.</summary>
    [Quantity("[ppm]", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How much CO in ppm was in the room before you began?", While.OnSite)]
    public decimal? BeforePpm { get; init; }

    /// <summary>Highest value once the room had been aired with the boiler off, ppm.</summary>
    [Quantity("[ppm]", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How much CO in ppm was in the room once it was aired, with the boiler off?", While.OnSite)]
    public decimal? AfterAiringPpm { get; init; }

    /// <summary>Highest value while the boiler ran, ppm.</summary>
    [Quantity("[ppm]", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the highest CO in ppm in the room while the boiler ran?", While.Running)]
    public decimal? RunningPeakPpm { get; init; }

    /// <summary>Highest value in the room behind the opening nearest to the flue terminal while the boiler ran, ppm.</summary>
    [Quantity("[ppm]", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the highest CO in ppm in the room behind the opening near the terminal while the boiler ran?", While.Running)]
    public decimal? RoomBehindOpeningPpm { get; init; }

    /// <summary>Value at the final sweep, ppm.</summary>
    [Quantity("[ppm]", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How much CO in ppm was in the room at the final sweep?", While.Running)]
    public decimal? AfterPpm { get; init; }

    /// <summary>Where the carbon monoxide came from, if any was found.</summary>
    [Text(500)]
    [Class(MemberClass.Evidence)]
    [Ask("Where did the carbon monoxide come from?", While.OnSite)]
    public string? Cause { get; init; }

    /// <summary>Whether the room was aired.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the room ventilated?", While.OnSite)]
    public bool? Ventilated { get; init; }
}
