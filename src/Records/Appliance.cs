using Records.Metadata;

namespace Records;

/// <summary>The boiler, its data plate and its state on leaving.</summary>
public sealed class Appliance
{
    /// <summary>Serial number on the data plate; with the maker it is the key of the appliance's history.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("What is the serial number on the data plate?", While.OnSite)]
    public string? SerialNumber { get; init; }

    /// <summary>Maker named on the data plate.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Who is the maker named on the data plate?", While.OnSite)]
    public string? Maker { get; init; }

    /// <summary>Model named on the data plate.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Which model does the data plate name?", While.OnSite)]
    public string? Model { get; init; }

    /// <summary>Kind of boiler.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is it a combination, system, heat-only or back boiler?", While.OnSite)]
    public ApplianceKind? Kind { get; init; }

    /// <summary>Id of a stored profile of maker's limits. Absent: none used.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Which stored appliance profile belongs to this appliance?", While.Paper)]
    public string? ProfileId { get; init; }

    /// <summary>Where in the premises it stands, in words.</summary>
    [Text(200)]
    [Class(MemberClass.Identity)]
    [Ask("Where in the premises is the appliance?", While.OnSite)]
    public string? Location { get; init; }

    /// <summary>The gas it burns now. Required, but where work.result is noAccess or refused and no reading of flue gas or inlet air, gas pressure, gas rate, tightness test or fitted part is recorded.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Which gas does the appliance burn?", While.OnSite)]
    public Fuel? Fuel { get; init; }

    /// <summary>The gas for which the data plate says it is made or converted.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("For which gas is the appliance made, by its data plate?", While.OnSite)]
    public Fuel? PlateFuel { get; init; }

    /// <summary>Room-sealed or open-flued, with or without fan.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What type of flue does the appliance have?", While.OnSite)]
    public FlueType? FlueType { get; init; }

    /// <summary>Whether other appliances use the same flue.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the flue shared with other appliances?", While.OnSite)]
    public bool? SharedFlue { get; init; }

    /// <summary>Pressure inside the case against the room while the fan runs.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the case under positive or negative pressure?", While.OnSite)]
    public CasePressure? CasePressure { get; init; }

    /// <summary>Whether it is a condensing boiler.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is it a condensing boiler?", While.OnSite)]
    public bool? Condensing { get; init; }

    /// <summary>How the burner gets its air and gas.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the burner premixed, fan-assisted or atmospheric?", While.OnSite)]
    public BurnerKind? BurnerKind { get; init; }

    /// <summary>Rated heat input on the data plate, kW, on the basis of ratedInputBasis.</summary>
    [Quantity("kW", 0.1, 100_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What rated heat input in kW does the data plate give?", While.OnSite)]
    public decimal? RatedInputKw { get; init; }

    /// <summary>Whether the rated input counts the net or the gross calorific value.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the rated input on the plate net or gross?", While.OnSite)]
    public InputBasis? RatedInputBasis { get; init; }

    /// <summary>Rated heat output on the data plate, kW.</summary>
    [Quantity("kW", 0.1, 100_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("What rated heat output in kW does the data plate give?", While.OnSite)]
    public decimal? RatedOutputKw { get; init; }

    /// <summary>Input to which the boiler is range rated, kW, on the basis of ratedInputBasis. Absent: not range rated, or not recorded.</summary>
    [Quantity("kW", 0.1, 100_000)]
    [Class(MemberClass.DecidingFact)]
    [Ask("To what input in kW is the boiler range rated?", While.OnSite)]
    public decimal? RangeRatedInputKw { get; init; }

    /// <summary>Day of installation.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was the appliance installed?", While.Paper)]
    public DateOnly? InstalledOn { get; init; }

    /// <summary>Whether the appliance belongs to the tenant.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Does the appliance belong to the tenant?", While.Paper)]
    public bool? OwnedByTenant { get; init; }

    /// <summary>Whether it was changed from its approved state.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("Has the appliance been modified?", While.OnSite)]
    public bool? Modified { get; init; }

    /// <summary>Whether it has a device that shuts it down before the room's air is fouled.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the appliance have an oxygen depletion (vitiation) device?", While.OnSite)]
    public bool? VitiationDevice { get; init; }

    /// <summary>Metal of the heat exchanger; decides brush and cleaner.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What metal is the heat exchanger made of?", While.Open)]
    public HeatExchangerMaterial? HeatExchangerMaterial { get; init; }

    /// <summary>How the engineer left the appliance.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the appliance left in use, turned off or disconnected?", While.OnSite)]
    public StateOnLeaving? StateOnLeaving { get; init; }

    /// <summary>Why it was not left in use. Absent: it was, or no reason is recorded.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Why was the appliance left off?", While.OnSite)]
    public LeftOffReason? LeftOffBecause { get; init; }

    /// <summary>Whether a valve at its inlet can shut the gas off. Regulation 26(6) of the Gas Safety (Installation and Use) Regulations 1998.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is there a valve at the inlet that shuts off the gas?", While.OnSite)]
    public bool? ShutOffAtInlet { get; init; }

    /// <summary>Whether a used appliance was verified to be safe for further use before it was installed. Regulation 26(3) of the Gas Safety (Installation and Use) Regulations 1998.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the used appliance verified to be safe for further use?", While.OnSite)]
    public bool? UsedVerifiedSafe { get; init; }
}
