using Records.Metadata;

namespace Records;

/// <summary>One member of the record that was not looked at or measured, and why.</summary>
public sealed class NotDone
{
    /// <summary>JSON Pointer to the member, such as /gasSupply/rate.</summary>
    [Text(300)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Which part of the record could not be filled?", While.OnSite)]
    public string? What { get; init; }

    /// <summary>Why not.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Why could it not be done?", While.OnSite)]
    public NotDoneReason? Because { get; init; }

    /// <summary>More about the reason, in words; decides nothing.</summary>
    [Text(500)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What more is there to say about the reason?", While.OnSite)]
    public string? Note { get; init; }
}
