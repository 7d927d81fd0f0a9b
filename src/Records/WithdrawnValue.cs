using Records.Metadata;

namespace Records;

/// <summary>One value that was sent in an earlier answer of this visit and is taken back.</summary>
public sealed class WithdrawnValue
{
    /// <summary>JSON Pointer to the member whose value is taken back, such as /combustion/readings/0/coPpm.</summary>
    [Text(300)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Which value do you take back?", While.Paper)]
    public string? What { get; init; }

    /// <summary>Why it is taken back.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Why do you take the value back?", While.Paper)]
    public WithdrawalReason? Because { get; init; }

    /// <summary>What happened, in the engineer's words.</summary>
    [Text(500)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What happened that the value is taken back?", While.Paper)]
    public string? Note { get; init; }
}
