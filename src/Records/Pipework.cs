using Records.Metadata;

namespace Records;

/// <summary>The installation pipework as seen.</summary>
public sealed class Pipework
{
    /// <summary>Whether it is sound to the eye.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the visible gas pipework sound?", While.OnSite)]
    public bool? VisualOk { get; init; }

    /// <summary>Whether there is damage or corrosion.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("Is there damage or corrosion on the pipework?", While.OnSite)]
    public bool? DamageOrCorrosion { get; init; }

    /// <summary>Whether it is sleeved where it passes through walls.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the pipework sleeved through walls?", While.OnSite)]
    public bool? Sleeved { get; init; }

    /// <summary>Whether it is supported.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the pipework properly supported?", While.OnSite)]
    public bool? Supported { get; init; }
}
