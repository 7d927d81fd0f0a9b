using Records.Metadata;

namespace Records;

/// <summary>One tightness test of the installation.</summary>
public sealed class TightnessTest
{
    /// <summary>Before or after the work.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the tightness test before or after the work?", While.OnSite)]
    public WorkStage? Stage { get; init; }

    /// <summary>Day of the test. Absent: the day of the visit.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was the tightness test?", While.OnSite)]
    public DateOnly? TestedOn { get; init; }

    /// <summary>Edition of the tightness-testing standard that was followed, such as 4.</summary>
    [Text(50)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Which edition of the tightness-testing standard did you follow?", While.Paper)]
    public string? Edition { get; init; }

    /// <summary>Installation volume, cubic metres.</summary>
    [Quantity("m3", 0, 10_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the installation volume in m3?", While.OnSite)]
    public decimal? InstallationVolumeM3 { get; init; }

    /// <summary>How the volume was found: measured, estimated or the like.</summary>
    [Text(200)]
    [Class(MemberClass.DecidingFact)]
    [Ask("How was the installation volume found?", While.OnSite)]
    public string? InstallationVolumeFrom { get; init; }

    /// <summary>Outside diameter of the largest pipe in the tested section, mm.</summary>
    [Quantity("mm", 0.1, 10_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("How wide in mm is the largest pipe?", While.OnSite)]
    public decimal? LargestPipeMm { get; init; }

    /// <summary>Highest operating pressure of the supply, bar.</summary>
    [Quantity("bar", 0, 100)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the highest operating pressure of the supply in bar?", While.OnSite)]
    public decimal? SupplyPressureBar { get; init; }

    /// <summary>Whether exposed metalwork was proved free of voltage first.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the metalwork proved safe to touch before the test?", While.OnSite)]
    public bool? SafeToTouchChecked { get; init; }

    /// <summary>Pressure at which the let-by test began, mbar.</summary>
    [Quantity("mbar", -1100, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("At what pressure in mbar did the let-by test begin?", While.OnSite)]
    public decimal? LetByPressureMbar { get; init; }

    /// <summary>Rise during the let-by test, mbar.</summary>
    [Quantity("mbar", -10_000, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("By how many mbar did the pressure rise during the let-by test?", While.OnSite)]
    public decimal? LetByRiseMbar { get; init; }

    /// <summary>Length of the let-by test, minutes.</summary>
    [Quantity("min", 0, 1440)]
    [Class(MemberClass.Evidence)]
    [Ask("How many minutes did the let-by test last?", While.OnSite)]
    public decimal? LetByMinutes { get; init; }

    /// <summary>Pressure at the start of the test, mbar.</summary>
    [Quantity("mbar", -1100, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the test pressure in mbar?", While.OnSite)]
    public decimal? TestPressureMbar { get; init; }

    /// <summary>Minutes allowed for the temperature to settle.</summary>
    [Quantity("min", 0, 1440)]
    [Class(MemberClass.Evidence)]
    [Ask("How many minutes did you wait for the pressure to settle?", While.OnSite)]
    public decimal? StabilisationMinutes { get; init; }

    /// <summary>Length of the test, minutes.</summary>
    [Quantity("min", 0, 1440)]
    [Class(MemberClass.Evidence)]
    [Ask("How many minutes did the tightness test last?", While.OnSite)]
    public decimal? DurationMinutes { get; init; }

    /// <summary>Pressure drop over the test, mbar; negative is a rise.</summary>
    [Quantity("mbar", -10_000, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("By how many mbar did the pressure drop?", While.OnSite)]
    public decimal? DropMbar { get; init; }

    /// <summary>Whether the appliances stayed connected.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were the appliances connected during the test?", While.OnSite)]
    public bool? AppliancesConnected { get; init; }

    /// <summary>Whether the appliance isolation valves were open.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were the appliance valves open during the test?", While.OnSite)]
    public bool? ApplianceValvesOpen { get; init; }

    /// <summary>Movement of the gauge with the appliances isolated, mbar.</summary>
    [Quantity("mbar", -10_000, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("By how many mbar did the gauge move with the appliances isolated?", While.OnSite)]
    public decimal? PipeworkOnlyMovementMbar { get; init; }

    /// <summary>Whether the appliances could not be isolated.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was it impracticable to isolate the appliances?", While.OnSite)]
    public bool? IsolationImpracticable { get; init; }

    /// <summary>Water or electronic gauge.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the gauge a water gauge or electronic?", While.OnSite)]
    public PressureGaugeKind? Gauge { get; init; }

    /// <summary>Smallest step the gauge shows, mbar.</summary>
    [Quantity("mbar", 0.0001, 1000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the smallest step of the gauge in mbar?", While.OnSite)]
    public decimal? GaugeResolutionMbar { get; init; }

    /// <summary>Permitted drop as the engineer took it from the standard, mbar.</summary>
    [Quantity("mbar", 0, 10_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What drop in mbar does the standard permit here?", While.Paper)]
    public decimal? PermittedDropMbar { get; init; }

    /// <summary>Table and edition of the permitted drop.</summary>
    [Text(200)]
    [Class(MemberClass.Identity)]
    [Ask("In which table of which edition does the permitted drop stand?", While.Paper)]
    public string? PermittedDropSource { get; init; }

    /// <summary>Whether gas was smelt at any time.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("Was there any smell of gas?", While.OnSite)]
    public bool? GasSmell { get; init; }
}
