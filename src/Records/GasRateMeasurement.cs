using Records.Metadata;

namespace Records;

/// <summary>Gas volume timed at the meter; give the volume in cubic metres or in cubic feet, not both.</summary>
public sealed class GasRateMeasurement
{
    /// <summary>Volume passed, cubic metres.</summary>
    [Quantity("m3", 0, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What volume in m3 passed the meter?", While.Running)]
    public decimal? VolumeM3 { get; init; }

    /// <summary>Volume passed, cubic feet.</summary>
    [Quantity("[cft_i]", 0, 100_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What volume in cubic feet passed the meter?", While.Running)]
    public decimal? VolumeFt3 { get; init; }

    /// <summary>Duration, seconds.</summary>
    [Quantity("s", 1, 86_400)]
    [Class(MemberClass.Evidence)]
    [Ask("Over how many seconds was the gas rate timed?", While.Running)]
    public decimal? Seconds { get; init; }

    /// <summary>Gross calorific value used, MJ for each cubic metre.</summary>
    [Quantity("MJ/m3", 1, 200)]
    [Class(MemberClass.Evidence)]
    [Ask("What calorific value in MJ/m3 was used?", While.Paper)]
    public decimal? CalorificValueMjPerM3 { get; init; }

    /// <summary>Gas temperature at the meter, degrees Celsius.</summary>
    [Quantity("Cel", -90, 200)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the gas temperature at the meter in degrees Celsius?", While.Running)]
    public decimal? MeterTemperatureC { get; init; }

    /// <summary>Whether the boiler ran at maximum rate.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Did the boiler run at maximum rate while you timed the gas?", While.Running)]
    public bool? AtMaximum { get; init; }

    /// <summary>Whether every other appliance was off.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were all other appliances off while you timed the gas?", While.Running)]
    public bool? OtherAppliancesOff { get; init; }

    /// <summary>Minutes at maximum rate before timing began.</summary>
    [Quantity("min", 0, 1440)]
    [Class(MemberClass.Evidence)]
    [Ask("How many minutes had the boiler run at maximum before timing?", While.Running)]
    public decimal? WarmMinutes { get; init; }
}
