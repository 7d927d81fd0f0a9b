using Records.Metadata;

namespace Records;

/// <summary>Reading at the air-inlet test point of a room-sealed boiler.</summary>
public sealed class AirInlet
{
    /// <summary>Oxygen in the inlet air, % by volume.</summary>
    [Quantity("%", 0, 100)]
    [Class(MemberClass.Evidence)]
    [Ask("How much O2 in % was in the inlet air?", While.Running)]
    public decimal? O2Percent { get; init; }

    /// <summary>Carbon dioxide in the inlet air, % by volume.</summary>
    [Quantity("%", 0, 100)]
    [Class(MemberClass.Evidence)]
    [Ask("How much CO2 in % was in the inlet air?", While.Running)]
    public decimal? Co2Percent { get; init; }

    /// <summary>Why it could not be read.</summary>
    [Text(500)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Why could the air inlet not be read?", While.Running)]
    public string? NotPracticableReason { get; init; }
}
