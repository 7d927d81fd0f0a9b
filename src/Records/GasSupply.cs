using Records.Metadata;

namespace Records;

/// <summary>Meter, pressures and gas rate.</summary>
public sealed class GasSupply
{
    /// <summary>Kind of meter in the tested section.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What kind of gas meter is there?", While.OnSite)]
    public MeterKind? MeterKind { get; init; }

    /// <summary>Whether the meter can be read.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Can the meter be read?", While.OnSite)]
    public bool? MeterDisplayWorks { get; init; }

    /// <summary>Whether the regulator's seal is unbroken.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the seal of the regulator intact?", While.OnSite)]
    public bool? RegulatorSealIntact { get; init; }

    /// <summary>Standing (lock-up) pressure at the meter outlet, mbar.</summary>
    [Quantity("mbar", -1100, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the standing pressure at the meter in mbar?", While.OnSite)]
    public decimal? MeterStandingMbar { get; init; }

    /// <summary>Operating pressure at the meter outlet, mbar.</summary>
    [Quantity("mbar", -1100, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the operating pressure at the meter in mbar?", While.Running)]
    public decimal? MeterOperatingMbar { get; init; }

    /// <summary>Whether the other appliances ran at half load meanwhile.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Did the other appliances run at half load while you read the meter pressure?", While.Running)]
    public bool? OthersAtHalfLoad { get; init; }

    /// <summary>Working pressure at the appliance inlet at maximum rate, mbar.</summary>
    [Quantity("mbar", -1100, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the working pressure at the appliance inlet in mbar?", While.Running)]
    public decimal? ApplianceInletMbar { get; init; }

    /// <summary>Burner pressure, mbar; negative behind a zero governor.</summary>
    [Quantity("mbar", -1100, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the burner pressure in mbar?", While.Running)]
    public decimal? BurnerMbar { get; init; }

    /// <summary>Where the pressure at the appliance was read.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the pressure read at a test nipple or by the maker's own procedure?", While.Running)]
    public PressureReadBy? PressureBy { get; init; }

    /// <summary>Whether all test nipples were closed again.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were the pressure test points closed again?", While.OnSite)]
    public bool? TestPointsClosed { get; init; }

    /// <summary>Whether the closed test nipples were checked for leaks.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were the closed test points checked for leaks?", While.Running)]
    public bool? TestPointsLeakChecked { get; init; }

    /// <summary>To whom a pressure or regulator fault was reported.</summary>
    [Text(200)]
    [Class(MemberClass.Identity)]
    [Ask("To whom was the supply fault reported?", While.Paper)]
    public string? ReportedTo { get; init; }

    /// <summary>The gas rate as timed at the meter.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What gas rate did you time at the meter?", While.Running)]
    public GasRateMeasurement? Rate { get; init; }
}
