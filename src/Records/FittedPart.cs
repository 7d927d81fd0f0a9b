using Records.Metadata;

namespace Records;

/// <summary>One part fitted on this visit.</summary>
public sealed class FittedPart
{
    /// <summary>Part number.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("What is the part number?", While.Paper)]
    public string? PartNumber { get; init; }

    /// <summary>What kind of part it is.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("What kind of part did you fit?", While.OnSite)]
    public PartKind? Kind { get; init; }

    /// <summary>The gas for which the part is made. Absent: not gas-specific, or not recorded.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("For which gas is the part made?", While.Paper)]
    public Fuel? ForFuel { get; init; }
}
