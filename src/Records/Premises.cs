using Records.Metadata;

namespace Records;

/// <summary>Where the appliance stands, without names or addresses.</summary>
public sealed class Premises
{
    /// <summary>The caller's own reference of the premises; no address.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("What is your own reference for the premises?", While.Paper)]
    public string? Reference { get; init; }

    /// <summary>How the premises are held; rented brings in the landlord's duties.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Are the premises owner-occupied, rented or a workplace?", While.OnSite)]
    public PremisesUse? Use { get; init; }

    /// <summary>The room in which the appliance stands.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Which room is the appliance in?", While.OnSite)]
    public Room? Room { get; init; }

    /// <summary>Whether the room is used wholly or partly as living accommodation.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the room used as living accommodation?", While.OnSite)]
    public bool? RoomIsLivingSpace { get; init; }

    /// <summary>Whether anybody sleeps in the room.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Does anybody sleep in the room?", While.OnSite)]
    public bool? RoomIsSleeping { get; init; }

    /// <summary>Whether the room has been slept in since before the day from which the law forbids it. Absent: no exception is claimed.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Has the room been slept in since before the law forbade it?", While.Paper)]
    public bool? SleptInSinceBeforeRegulations { get; init; }

    /// <summary>Whether the room is a cellar, a pit or otherwise below ground, where heavy gas gathers.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the room below ground level?", While.OnSite)]
    public bool? BelowGround { get; init; }

    /// <summary>Building work near appliance, flue or vents since the last visit.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("Has anything near the appliance, flue or vents been altered since the last visit?", While.OnSite)]
    public bool? AlteredSinceLastVisit { get; init; }

    /// <summary>Measured air permeability of the dwelling at 50 Pa, in cubic metres an hour for each square metre of envelope.</summary>
    [Quantity("m3/(h.m2)", 0, 1000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the air permeability of the dwelling in m3/(h.m2)?", While.Paper)]
    public decimal? AirPermeabilityM3PerHM2 { get; init; }
}
