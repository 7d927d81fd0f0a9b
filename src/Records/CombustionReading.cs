using Records.Metadata;
using Records.Values;

namespace Records;

/// <summary>One set of flue gas values at one rate.</summary>
public sealed class CombustionReading
{
    /// <summary>Maximum or minimum rate.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the reading taken at maximum or minimum rate?", While.Running)]
    public FiringRate? Rate { get; init; }

    /// <summary>Before or after the work; only a reading after the work can pass.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the reading taken before or after the work?", While.Running)]
    public WorkStage? Stage { get; init; }

    /// <summary>When it was taken, RFC 3339 with offset.</summary>
    [Class(MemberClass.Time)]
    [Ask("When was the reading taken (date, time and offset)?", While.Running)]
    public Timestamp? TakenAt { get; init; }

    /// <summary>Serial number of the analyser, as listed in instruments.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("With which analyser (serial number) was the reading taken?", While.Paper)]
    public string? Instrument { get; init; }

    /// <summary>Load at which the boiler ran, % of its rated or range-rated input.</summary>
    [Quantity("%", 0, 200)]
    [Class(MemberClass.Evidence)]
    [Ask("At what load in % did the boiler run?", While.Running)]
    public decimal? LoadPercent { get; init; }

    /// <summary>Carbon monoxide, ppm by volume in the dry flue gas as sampled.</summary>
    [Quantity("[ppm]", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How much CO in ppm did the analyser show?", While.Running)]
    public decimal? CoPpm { get; init; }

    /// <summary>Carbon dioxide, % by volume, dry.</summary>
    [Quantity("%", 0, 100)]
    [Class(MemberClass.Evidence)]
    [Ask("How much CO2 in % did the analyser show?", While.Running)]
    public decimal? Co2Percent { get; init; }

    /// <summary>Oxygen, % by volume, dry.</summary>
    [Quantity("%", 0, 100)]
    [Class(MemberClass.Evidence)]
    [Ask("How much O2 in % did the analyser show?", While.Running)]
    public decimal? O2Percent { get; init; }

    /// <summary>Flue gas temperature, degrees Celsius.</summary>
    [Quantity("Cel", -90, 2000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the flue gas temperature in degrees Celsius?", While.Running)]
    public decimal? FlueTemperatureC { get; init; }

    /// <summary>Combustion air temperature, degrees Celsius.</summary>
    [Quantity("Cel", -90, 200)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the combustion air temperature in degrees Celsius?", While.Running)]
    public decimal? AirTemperatureC { get; init; }

    /// <summary>CO/CO2 ratio as the analyser showed it; checked against CO and CO2, never used in their place.</summary>
    [Quantity("1", 0, 1_000_000)]
    [Class(MemberClass.Volunteered)]
    [Ask("What CO/CO2 ratio did the analyser show?", While.Running)]
    public decimal? StatedRatio { get; init; }

    /// <summary>Efficiency as the analyser showed it, %.</summary>
    [Quantity("%", 0, 120)]
    [Class(MemberClass.Volunteered)]
    [Ask("What efficiency in % did the analyser show?", While.Running)]
    public decimal? StatedEfficiencyPercent { get; init; }
}
