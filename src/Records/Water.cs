using Records.Metadata;

namespace Records;

/// <summary>The water side of the boiler and its sealed system.</summary>
public sealed class Water
{
    /// <summary>Cold fill pressure, bar.</summary>
    [Quantity("bar", -1.1, 100)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the cold fill pressure in bar?", While.OnSite)]
    public decimal? ColdFillBar { get; init; }

    /// <summary>Pressure when hot, bar.</summary>
    [Quantity("bar", -1.1, 100)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the hot pressure in bar?", While.Running)]
    public decimal? HotBar { get; init; }

    /// <summary>Flow temperature, degrees Celsius.</summary>
    [Quantity("Cel", -90, 400)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the flow temperature in degrees Celsius?", While.Running)]
    public decimal? FlowTemperatureC { get; init; }

    /// <summary>Return temperature, degrees Celsius.</summary>
    [Quantity("Cel", -90, 400)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the return temperature in degrees Celsius?", While.Running)]
    public decimal? ReturnTemperatureC { get; init; }

    /// <summary>Pre-charge of the expansion vessel, bar.</summary>
    [Quantity("bar", -1.1, 100)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the pre-charge of the expansion vessel in bar?", While.OnSite)]
    public decimal? VesselPrechargeBar { get; init; }

    /// <summary>Whether the water side was at zero pressure meanwhile.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the vessel checked with the water side at zero pressure?", While.OnSite)]
    public bool? VesselCheckedAtZeroPressure { get; init; }

    /// <summary>Height of the system above the vessel, metres.</summary>
    [Quantity("m", 0, 1000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("How many metres does the system rise above the vessel?", While.OnSite)]
    public decimal? StaticHeadM { get; init; }

    /// <summary>Volume of the expansion vessel, litres.</summary>
    [Quantity("L", 0, 1_000_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("How many litres does the expansion vessel hold?", While.OnSite)]
    public decimal? VesselVolumeL { get; init; }

    /// <summary>Water content of the system, litres.</summary>
    [Quantity("L", 0, 1_000_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("How many litres of water does the system hold?", While.OnSite)]
    public decimal? SystemVolumeL { get; init; }

    /// <summary>State of the pressure relief valve.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("In what state is the pressure relief valve?", While.OnSite)]
    public ReliefValveState? ReliefValve { get; init; }

    /// <summary>Setting of the relief valve, bar.</summary>
    [Quantity("bar", 0, 100)]
    [Class(MemberClass.DecidingFact)]
    [Ask("At how many bar is the relief valve set?", While.OnSite)]
    public decimal? ReliefSettingBar { get; init; }

    /// <summary>Whether its discharge ends where it can hurt nobody.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the relief valve discharge at a safe place?", While.OnSite)]
    public bool? ReliefDischargeSafe { get; init; }

    /// <summary>Whether the filling loop was left disconnected.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the filling loop left disconnected?", While.OnSite)]
    public bool? FillingLoopDisconnected { get; init; }

    /// <summary>Whether the inhibitor was tested.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the inhibitor tested?", While.OnSite)]
    public bool? InhibitorTested { get; init; }

    /// <summary>Whether the test was in order.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the inhibitor in order?", While.OnSite)]
    public bool? InhibitorOk { get; init; }

    /// <summary>Day of the last dose of inhibitor.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was inhibitor last dosed?", While.Paper)]
    public DateOnly? InhibitorDosedOn { get; init; }

    /// <summary>Whether the system filter was cleaned.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("Was the system filter cleaned?", While.OnSite)]
    public bool? FilterCleaned { get; init; }

    /// <summary>Sealed, or open to a feed and expansion cistern.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the system sealed or open-vented?", While.OnSite)]
    public WaterSystemType? SystemType { get; init; }

    /// <summary>Whether open vent and cold feed are clear from end to end.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Are the open vent and the cold feed clear?", While.OnSite)]
    public bool? VentAndFeedOpen { get; init; }
}
