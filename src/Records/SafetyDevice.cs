using Records.Metadata;

namespace Records;

/// <summary>One safety device and its proof.</summary>
public sealed class SafetyDevice
{
    /// <summary>What the device guards.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Which safety device is it?", While.OnSite)]
    public SafetyDeviceKind? Kind { get; init; }

    /// <summary>Whether it was made to act.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the safety device tested?", While.Running)]
    public bool? Tested { get; init; }

    /// <summary>Whether it acted as it must.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Did the safety device act as it must?", While.Running)]
    public bool? Passed { get; init; }

    /// <summary>Why it could not be tested.</summary>
    [Text(500)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Why could the safety device not be tested?", While.Running)]
    public string? NotPracticableReason { get; init; }
}
