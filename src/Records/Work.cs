using Records.Metadata;

namespace Records;

/// <summary>What the visit came to. What is stated here adds to what the rest of the record shows and takes nothing away from it.</summary>
public sealed class Work
{
    /// <summary>What the job was, more closely than jobType says.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What kind of work was it, more closely?", While.Paper)]
    public WorkKind? Kind { get; init; }

    /// <summary>How far the work went.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the work carried out, and if not, why?", While.OnSite)]
    public WorkResult? Result { get; init; }

    /// <summary>What was worked on. An empty list: stated, nothing was.</summary>
    [Items(20)]
    [Class(MemberClass.WorkDone)]
    [Ask("Which parts of the installation did you work on (an empty list if none)?", While.OnSite)]
    public IReadOnlyList<TouchedPart>? Touched { get; init; }

    /// <summary>Whether no joint that carries gas was opened.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was every joint that carries gas left closed?", While.OnSite)]
    public bool? NoGasJointOpened { get; init; }

    /// <summary>Whether every gasway left open was sealed with the proper fitting.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was every open gasway sealed with the proper fitting?", While.OnSite)]
    public bool? GaswaysSealed { get; init; }

    /// <summary>Whether the installation was purged.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the gas installation purged?", While.OnSite)]
    public bool? Purged { get; init; }

    /// <summary>Whether every appliance on the installation was lit again and examined.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was every appliance lit again and examined?", While.Running)]
    public bool? Relit { get; init; }

    /// <summary>Members that were not looked at or measured, each with its reason. An empty list: stated, none.</summary>
    [Items(100)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What could you not do, and why?", While.OnSite)]
    public IReadOnlyList<NotDone>? NotDone { get; init; }

    /// <summary>Groups of observations that the engineer confirmed together. An empty list: stated, none.</summary>
    [Items(100)]
    [Class(MemberClass.Evidence)]
    [Ask("Which groups of observations did you confirm together?", While.OnSite)]
    public IReadOnlyList<ConfirmedGroup>? Confirmed { get; init; }

    /// <summary>Values that were sent earlier and are taken back, each with its reason. An empty list: stated, none.</summary>
    [Items(100)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Which values in an earlier record of this visit were wrong, and why?", While.Paper)]
    public IReadOnlyList<WithdrawnValue>? Withdrawn { get; init; }

    /// <summary>What was tried to get in or to reach the appliance, in words.</summary>
    [Text(500)]
    [Class(MemberClass.Evidence)]
    [Ask("What did you try to get to the appliance?", While.OnSite)]
    public string? Tried { get; init; }

    /// <summary>What was left for the occupier, in words.</summary>
    [Text(500)]
    [Class(MemberClass.Evidence)]
    [Ask("What did you leave for the occupier?", While.OnSite)]
    public string? LeftBehind { get; init; }
}
