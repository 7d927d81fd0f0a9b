using Records.Metadata;

namespace Records;

/// <summary>Burner and electrodes.</summary>
public sealed class Burner
{
    /// <summary>Condition of the burner.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("In what condition is the burner?", While.Open)]
    public BurnerCondition? Condition { get; init; }

    /// <summary>Spark gap, mm.</summary>
    [Quantity("mm", 0, 1000)]
    [Class(MemberClass.Evidence)]
    [Ask("How wide in mm is the electrode gap?", While.Open)]
    public decimal? ElectrodeGapMm { get; init; }

    /// <summary>Whether the electrodes are clean.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Are the electrodes clean?", While.Open)]
    public bool? ElectrodesClean { get; init; }

    /// <summary>Flame ionisation current, microamperes.</summary>
    [Quantity("uA", -10_000, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the flame current in microamperes?", While.Running)]
    public decimal? FlameCurrentMicroamps { get; init; }
}
