using Records.Metadata;

namespace Records;

/// <summary>The flue, its terminal, and the seal of the case.</summary>
public sealed class Flue
{
    /// <summary>Whether the flue is sound to the eye.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the flue sound to the eye?", While.OnSite)]
    public bool? VisualOk { get; init; }

    /// <summary>What the flue is made of.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the flue made of metal or of plastic?", While.OnSite)]
    public FlueMaterial? Material { get; init; }

    /// <summary>Whether its whole length could be seen.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Could the whole route of the flue be seen?", While.OnSite)]
    public bool? WholeRouteSeen { get; init; }

    /// <summary>Whether any of it runs in a closed void.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Does the flue run in a void?", While.OnSite)]
    public bool? InVoid { get; init; }

    /// <summary>Whether the void has inspection hatches at the joints.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Are there inspection hatches at the flue joints?", While.OnSite)]
    public bool? InspectionHatches { get; init; }

    /// <summary>Smaller side of the smallest hatch, mm.</summary>
    [Quantity("mm", 0, 100_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How wide in mm is the smallest inspection hatch?", While.OnSite)]
    public decimal? HatchWidthMm { get; init; }

    /// <summary>Longest distance from the edge of a hatch to a joint, mm.</summary>
    [Quantity("mm", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How far in mm is the farthest joint from its hatch?", While.OnSite)]
    public decimal? HatchToJointMm { get; init; }

    /// <summary>Whether brackets and screws are all there and hold.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Are all flue supports in place and firm?", While.OnSite)]
    public bool? SupportsOk { get; init; }

    /// <summary>Whether the flue was confirmed to work.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the flue confirmed to be effective?", While.Running)]
    public bool? EffectivenessConfirmed { get; init; }

    /// <summary>Whether a flue flow test was passed.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Did the flue pass its flow test?", While.OnSite)]
    public bool? FlowTestPassed { get; init; }

    /// <summary>Whether a spillage test was passed.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Did the flue pass its spillage test?", While.Running)]
    public bool? SpillageTestPassed { get; init; }

    /// <summary>Whether extract fans ran during the spillage test.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were the extract fans running during the spillage test?", While.Running)]
    public bool? FansRunningDuringSpillage { get; init; }

    /// <summary>Whether the seal of the case was checked.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the seal of the case checked?", While.Running)]
    public bool? CaseSealChecked { get; init; }

    /// <summary>How it was checked.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("How was the seal of the case checked?", While.Running)]
    public CaseSealMethod? CaseSealMethod { get; init; }

    /// <summary>Whether the case is tight.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the case tight?", While.Running)]
    public bool? CaseSealOk { get; init; }

    /// <summary>Whether the terminal has a guard.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the flue terminal guarded?", While.OnSite)]
    public bool? TerminalGuarded { get; init; }

    /// <summary>Height of the terminal above ground, mm.</summary>
    [Quantity("mm", -10_000, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How high in mm above ground is the flue terminal?", While.OnSite)]
    public decimal? TerminalHeightMm { get; init; }

    /// <summary>Distances from the terminal. An empty list: stated, nothing near.</summary>
    [Items(50)]
    [Class(MemberClass.Evidence)]
    [Ask("What is near the flue terminal, and at what distance?", While.OnSite)]
    public IReadOnlyList<TerminalClearance>? TerminalClearances { get; init; }

    /// <summary>Whether the window, door or vent near the terminal was there before the flue was.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the opening near the terminal there before the flue?", While.OnSite)]
    public bool? OpeningOlderThanFlue { get; init; }
}
