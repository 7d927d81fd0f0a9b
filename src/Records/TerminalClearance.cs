using Records.Metadata;

namespace Records;

/// <summary>Distance from the flue terminal to one thing.</summary>
public sealed class TerminalClearance
{
    /// <summary>What the distance leads to.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the clearance measured to?", While.OnSite)]
    public ClearanceTo? To { get; init; }

    /// <summary>Distance, mm.</summary>
    [Quantity("mm", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("How many mm is it from the terminal?", While.OnSite)]
    public decimal? DistanceMm { get; init; }
}
