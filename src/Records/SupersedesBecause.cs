using Records.Metadata;

namespace Records;

/// <summary>Why a corrected record says better things than the one that it replaces.</summary>
public sealed class SupersedesBecause
{
    /// <summary>What had gone wrong.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Why does this record replace the earlier one?", While.Paper)]
    public required SupersedesReason Reason { get; init; }

    /// <summary>What happened, in the engineer's words.</summary>
    [Text(500)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What happened that the record had to be replaced?", While.Paper)]
    public string? Note { get; init; }
}
