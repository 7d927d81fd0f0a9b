using Records.Metadata;

namespace Records;

/// <summary>One joint that was opened or loosened.</summary>
public sealed class DisturbedJoint
{
    /// <summary>Where the joint is. A gas-valve place carries gas, whatever carriesGas says.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("Which joint was disturbed?", While.OnSite)]
    public JointPlace? Place { get; init; }

    /// <summary>Whether gas flows through the joint. At a gas-valve place it does: no is asked for again there. Absent at a meter union, isolation valve, pipe or test nipple: it does.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Does the joint carry gas?", While.OnSite)]
    public bool? CarriesGas { get; init; }

    /// <summary>Kind of seal.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What kind of seal does the joint have?", While.Open)]
    public JointSeal? Seal { get; init; }

    /// <summary>Condition of the seal that was put back.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("In what condition is the seal that was put back?", While.Open)]
    public SealCondition? Condition { get; init; }

    /// <summary>Whether the seal was renewed.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the seal renewed?", While.Open)]
    public bool? Renewed { get; init; }

    /// <summary>Part number of the new seal.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("What is the part number of the new seal?", While.Paper)]
    public string? PartNumber { get; init; }

    /// <summary>Whether the remade joint was checked for leaks.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the remade joint checked for leaks?", While.Running)]
    public bool? LeakChecked { get; init; }

    /// <summary>Leak-detection fluid or a detector.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("How was the joint checked for leaks?", While.Running)]
    public LeakCheckMethod? LeakCheckMethod { get; init; }

    /// <summary>Whether the burner was alight while the joint was checked.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the burner alight while the joint was checked?", While.Running)]
    public bool? BurnerAlight { get; init; }
}
