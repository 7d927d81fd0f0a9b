using Records.Metadata;

namespace Records;

/// <summary>
/// Limits from the maker's instructions. A value looser than the stored profile's or the default counts only with its source, and is then an
/// advisory; neither lifts a ceiling.
/// </summary>
public sealed class MakerLimits
{
    /// <summary>Highest CO/CO2 ratio that the maker allows, as a plain ratio (0.004, not 0.4 %).</summary>
    [Quantity("1", 0, 1)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's highest CO/CO2 ratio?", While.Paper)]
    public decimal? CoCo2RatioMax { get; init; }

    /// <summary>Highest CO that the maker allows, ppm in the dry flue gas as sampled.</summary>
    [Quantity("[ppm]", 0, 1_000_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's highest CO in ppm?", While.Paper)]
    public decimal? CoPpmMax { get; init; }

    /// <summary>Lowest CO2 at maximum rate, % by volume, dry.</summary>
    [Quantity("%", 0, 100)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's lowest CO2 in %?", While.Paper)]
    public decimal? Co2PercentMin { get; init; }

    /// <summary>Highest CO2 at maximum rate, % by volume, dry.</summary>
    [Quantity("%", 0, 100)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's highest CO2 in %?", While.Paper)]
    public decimal? Co2PercentMax { get; init; }

    /// <summary>Lowest working pressure at the appliance inlet, mbar.</summary>
    [Quantity("mbar", 0, 10_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's lowest inlet pressure in mbar?", While.Paper)]
    public decimal? InletPressureMbarMin { get; init; }

    /// <summary>Burner pressure at maximum rate, mbar.</summary>
    [Quantity("mbar", 0, 10_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What burner pressure in mbar does the maker give?", While.Paper)]
    public decimal? BurnerPressureMbar { get; init; }

    /// <summary>Smallest spark gap, mm.</summary>
    [Quantity("mm", 0, 1000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's smallest electrode gap in mm?", While.Paper)]
    public decimal? ElectrodeGapMmMin { get; init; }

    /// <summary>Largest spark gap, mm.</summary>
    [Quantity("mm", 0, 1000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's largest electrode gap in mm?", While.Paper)]
    public decimal? ElectrodeGapMmMax { get; init; }

    /// <summary>Highest flue gas temperature that the flue may bear, degrees Celsius.</summary>
    [Quantity("Cel", -90, 2000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What is the maker's highest flue gas temperature in degrees Celsius?", While.Paper)]
    public decimal? FlueTemperatureCMax { get; init; }

    /// <summary>Longest time between services, months.</summary>
    [Quantity("mo", 1, 1200)]
    [Class(MemberClass.DecidingFact)]
    [Ask("How many months may pass between services, by the maker?", While.Paper)]
    public decimal? ServiceIntervalMonths { get; init; }

    /// <summary>Joints whose seals the maker wants renewed at this service. An empty list: stated, none.</summary>
    [Items(50)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Which seals does the maker want renewed at this service?", While.Paper)]
    public IReadOnlyList<JointPlace>? SealsToRenew { get; init; }

    /// <summary>Document and page of these limits.</summary>
    [Text(200)]
    [Class(MemberClass.Identity)]
    [Ask("In which document and on which page do the maker's limits stand?", While.Paper)]
    public string? Source { get; init; }

    /// <summary>The maker's own reference for a decision on a reading outside these limits.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Under which reference did the maker decide on this reading?", While.Paper)]
    public string? DecisionReference { get; init; }
}
