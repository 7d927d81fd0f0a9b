using Records.Metadata;

namespace Records;

/// <summary>The carbon monoxide alarm.</summary>
public sealed class CoAlarm
{
    /// <summary>Whether there is one where it is needed.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is there a carbon monoxide alarm?", While.OnSite)]
    public bool? Present { get; init; }

    /// <summary>Whether its test button was tried with success.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the alarm tested?", While.OnSite)]
    public bool? Tested { get; init; }

    /// <summary>Day on the alarm by which it must be replaced.</summary>
    [Class(MemberClass.Time)]
    [Ask("By which day must the alarm be replaced?", While.OnSite)]
    public DateOnly? ReplaceBy { get; init; }

    /// <summary>Standard marked on it.</summary>
    [Text(100)]
    [Class(MemberClass.Evidence)]
    [Ask("Which standard is marked on the alarm?", While.OnSite)]
    public string? Standard { get; init; }

    /// <summary>Distance from the appliance, mm.</summary>
    [Quantity("mm", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How many mm is the alarm from the appliance?", While.OnSite)]
    public decimal? DistanceMm { get; init; }

    /// <summary>Whether it sounded since the last visit.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("Has the alarm sounded since the last visit?", While.OnSite)]
    public bool? ActivatedSinceLastVisit { get; init; }

    /// <summary>Reference of the gas emergency provider who attended.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Under which reference did the gas emergency provider attend?", While.Paper)]
    public string? EmergencyReference { get; init; }
}
