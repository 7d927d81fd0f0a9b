using Records.Metadata;

namespace Records;

/// <summary>Air for combustion and cooling.</summary>
public sealed class Ventilation
{
    /// <summary>Whether the air inlet of the appliance is clear.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the air inlet of the appliance clear?", While.OnSite)]
    public bool? AirInletClear { get; init; }

    /// <summary>Free area of the room's vents, square centimetres.</summary>
    [Quantity("cm2", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the free area of the vents in cm2?", While.OnSite)]
    public decimal? FreeAreaCm2 { get; init; }

    /// <summary>Whether the appliance stands in a compartment.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the appliance in a compartment?", While.OnSite)]
    public bool? Compartment { get; init; }

    /// <summary>Free area of the compartment's high vent, square centimetres.</summary>
    [Quantity("cm2", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the free area of the high vent in cm2?", While.OnSite)]
    public decimal? HighFreeAreaCm2 { get; init; }

    /// <summary>Free area of the compartment's low vent, square centimetres.</summary>
    [Quantity("cm2", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the free area of the low vent in cm2?", While.OnSite)]
    public decimal? LowFreeAreaCm2 { get; init; }

    /// <summary>Whether the vents lead outside or into a room.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Do the vents open to outside or to a room?", While.OnSite)]
    public VentilationOpensTo? OpensTo { get; init; }

    /// <summary>Whether the air comes through other rooms.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Does the air come through other rooms?", While.OnSite)]
    public bool? ThroughInnerRooms { get; init; }

    /// <summary>Whether a vent has gauze.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does any vent have gauze?", While.OnSite)]
    public bool? Gauze { get; init; }

    /// <summary>Whether a vent is blocked.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is any vent blocked?", While.OnSite)]
    public bool? Blocked { get; init; }

    /// <summary>Whether a vent can be closed.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Can any vent be closed?", While.OnSite)]
    public bool? Closable { get; init; }

    /// <summary>Whether the compartment's vents carry the notice against blocking.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Are the vents labelled against blocking?", While.OnSite)]
    public bool? Labelled { get; init; }

    /// <summary>Net input of all other open-flued appliances in the room, kW.</summary>
    [Quantity("kW", 0, 100_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the net input in kW of the other open-flued appliances in the room?", While.OnSite)]
    public decimal? OtherOpenFluedNetKw { get; init; }

    /// <summary>Whether an extract fan draws from the room.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is there an extract fan in the room?", While.OnSite)]
    public bool? ExtractFanInRoom { get; init; }
}
