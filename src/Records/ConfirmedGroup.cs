using Records.Metadata;

namespace Records;

/// <summary>One group of observations that the engineer confirmed together.</summary>
public sealed class ConfirmedGroup
{
    /// <summary>Name of the group.</summary>
    [Text(100)]
    [Class(MemberClass.Evidence)]
    [Ask("Which group of observations did you confirm?", While.OnSite)]
    public string? Group { get; init; }

    /// <summary>Version of the list of groups from which it was confirmed.</summary>
    [Text(50)]
    [Class(MemberClass.Identity)]
    [Ask("From which version of the list of groups did you confirm it?", While.Paper)]
    public string? ListVersion { get; init; }
}
