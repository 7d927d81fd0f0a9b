using Records.Metadata;

namespace Records;

/// <summary>Inspection and cleaning of the heat exchanger.</summary>
public sealed class HeatExchanger
{
    /// <summary>Whether its fire side was inspected.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the heat exchanger inspected?", While.Open)]
    public bool? Inspected { get; init; }

    /// <summary>Whether it was cleaned.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("Was the heat exchanger cleaned?", While.Open)]
    public bool? Cleaned { get; init; }

    /// <summary>Deposits found.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What deposits were on the heat exchanger?", While.Open)]
    public Deposits? Deposits { get; init; }

    /// <summary>How it was cleaned.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("How was the heat exchanger cleaned?", While.Open)]
    public CleaningMethod? Method { get; init; }

    /// <summary>Whether the maker's instructions allow that method.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Do the maker's instructions allow that cleaning method?", While.Paper)]
    public bool? MethodAllowedByMaker { get; init; }

    /// <summary>Whether the top plate or burner door was off.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("Was the top plate taken off?", While.Open)]
    public bool? TopPlateRemoved { get; init; }

    /// <summary>Time spent on the exchanger, minutes.</summary>
    [Quantity("min", 0, 10_080)]
    [Class(MemberClass.WorkDone)]
    [Ask("How many minutes were spent on the heat exchanger?", While.Paper)]
    public decimal? MinutesSpent { get; init; }
}
