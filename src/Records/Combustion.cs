using Records.Metadata;

namespace Records;

/// <summary>The combustion analysis: flue gas readings and the check of the air inlet.</summary>
public sealed class Combustion
{
    /// <summary>Whether the analyser was zeroed in outside air.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the analyser zeroed in outside air?", While.Running)]
    public bool? ZeroedOutdoors { get; init; }

    /// <summary>Minutes the boiler ran before the first reading counted.</summary>
    [Quantity("min", 0, 1440)]
    [Class(MemberClass.Evidence)]
    [Ask("How many minutes did the boiler run before the reading?", While.Running)]
    public decimal? SettledMinutes { get; init; }

    /// <summary>Flue gas readings. An empty list: stated, none taken.</summary>
    [Items(100)]
    [Class(MemberClass.Evidence)]
    [Ask("What were the flue gas readings?", While.Running)]
    public IReadOnlyList<CombustionReading>? Readings { get; init; }

    /// <summary>Reading in the air inlet, which shows whether the flue leaks into it.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What was read at the air-inlet test point?", While.Running)]
    public AirInlet? AirInlet { get; init; }

    /// <summary>Whether the sampling point was closed again.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the flue sampling point closed again?", While.OnSite)]
    public bool? TestPointClosed { get; init; }

    /// <summary>Why neither operating pressure nor heat input could be examined, in words. It decides nothing: a reason that counts stands in work.notDone.</summary>
    [Text(500)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Why could neither operating pressure nor gas rate be examined?", While.OnSite)]
    public string? PressureAndRateNotPracticableReason { get; init; }
}
