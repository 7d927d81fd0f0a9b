using Records.Metadata;

namespace Records;

/// <summary>Electrical safety around the appliance; yes or no but for the measured values.</summary>
public sealed class Electrical
{
    /// <summary>Whether the supply was isolated and proved dead before the case was opened.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the electrical supply safely isolated and proved dead?", While.OnSite)]
    public bool? IsolatedSafely { get; init; }

    /// <summary>Whether the supply was left switched off and secured against being switched on.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the electrical supply left off and secured?", While.OnSite)]
    public bool? SupplyOff { get; init; }

    /// <summary>Whether polarity is right.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the polarity right?", While.OnSite)]
    public bool? PolarityOk { get; init; }

    /// <summary>Whether the earth is continuous.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the earth continuous?", While.OnSite)]
    public bool? EarthOk { get; init; }

    /// <summary>Earth continuity, ohms.</summary>
    [Quantity("Ohm", 0, 1_000_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the earth continuity in ohms?", While.OnSite)]
    public decimal? EarthOhm { get; init; }

    /// <summary>Insulation resistance, megohms.</summary>
    [Quantity("MOhm", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the insulation resistance in megohms?", While.OnSite)]
    public decimal? InsulationMegohm { get; init; }

    /// <summary>Rating of the fuse, amperes.</summary>
    [Quantity("A", 0, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the fuse rating in amperes?", While.OnSite)]
    public decimal? FuseAmps { get; init; }

    /// <summary>Whether it can be isolated in both poles.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is there double-pole isolation?", While.OnSite)]
    public bool? DoublePoleIsolation { get; init; }

    /// <summary>Whether main protective bonding of the gas pipe was seen.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is main bonding of the gas pipe in place?", While.OnSite)]
    public bool? MainBonding { get; init; }

    /// <summary>Whether a temporary continuity bond was used while pipe or meter was parted.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was a temporary bond used while the pipe was parted?", While.OnSite)]
    public bool? TemporaryBondUsed { get; init; }
}
