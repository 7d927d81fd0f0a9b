using Records.Metadata;
using Records.Values;
using Wire;

namespace Records;

/// <summary>One visit to one gas boiler as the engineer recorded it. An absent member means "not recorded"; an empty list means "stated: none". Only the members marked required must be there, so that a half-filled record can be checked while the engineer is still on site.</summary>
public sealed class ServiceRecord
{
    /// <summary>The caller's own name for this record; need not be unique.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("What is your own reference for this record?", While.Paper)]
    public required string RecordId { get; init; }

    /// <summary>The evaluationId that this corrected record replaces. Absent: it replaces none.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Which earlier evaluation does this record replace?", While.Paper)]
    public string? Supersedes { get; init; }

    /// <summary>Why it replaces it. Needed where outcome or closing gets better by it.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Why does this record replace the earlier one?", While.Paper)]
    public SupersedesBecause? SupersedesBecause { get; init; }

    /// <summary>What the visit was for.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What kind of job was this visit?", While.Paper)]
    public required JobType JobType { get; init; }

    /// <summary>Whose law applies, as an ISO 3166-2 code: one whose law the rules hold.</summary>
    [Text(6)]
    [ValuesOf("Jurisdiction")]
    [Class(MemberClass.DecidingFact)]
    [Ask("In which country, or part of one, is the appliance?", While.Paper)]
    public required string Jurisdiction { get; init; }

    /// <summary>When the visit began, RFC 3339 with offset.</summary>
    [Class(MemberClass.Time)]
    [Ask("When did the visit start (date, time and offset)?", While.Paper)]
    public Timestamp? StartedAt { get; init; }

    /// <summary>When the visit ended; while still on site, the moment of asking. RFC 3339 with offset: the date written here decides whose law is in force.</summary>
    [Class(MemberClass.Time)]
    [Ask("When did the visit finish (date, time and offset)?", While.Paper)]
    public required Timestamp FinishedAt { get; init; }

    /// <summary>What the visit came to: how far it went, what was worked on, what was left out and why.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("What came of the visit, and what did you work on?", While.OnSite)]
    public Work? Work { get; init; }

    /// <summary>The building and the room.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What kind of premises and room is the appliance in?", While.OnSite)]
    public Premises? Premises { get; init; }

    /// <summary>Who did the work, and what the licence covers.</summary>
    [Class(MemberClass.Identity)]
    [Ask("Who did the work, and under which licence?", While.Paper)]
    public Engineer? Engineer { get; init; }

    /// <summary>The boiler itself, mostly from its data plate.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What does the data plate of the appliance say?", While.OnSite)]
    public required Appliance Appliance { get; init; }

    /// <summary>Limits from the maker's instructions for this very appliance.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Which limits do the maker's instructions give?", While.Paper)]
    public MakerLimits? MakerLimits { get; init; }

    /// <summary>The measuring instruments used. An empty list: stated, none used.</summary>
    [Items(50)]
    [Class(MemberClass.Identity)]
    [Ask("Which instruments did you measure with?", While.Paper)]
    public IReadOnlyList<Instrument>? Instruments { get; init; }

    /// <summary>The combustion analysis.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What did the combustion analysis show?", While.Running)]
    public Combustion? Combustion { get; init; }

    /// <summary>Carbon monoxide in the room air.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("How much carbon monoxide was in the room air?", While.Running)]
    public AmbientCo? AmbientCo { get; init; }

    /// <summary>Meter, pressures and gas rate.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What were the gas pressures and the gas rate?", While.Running)]
    public GasSupply? GasSupply { get; init; }

    /// <summary>Tightness tests of this visit, or relied on by it. An empty list: stated, none done.</summary>
    [Items(20)]
    [Class(MemberClass.Evidence)]
    [Ask("Which tightness tests did you carry out?", While.OnSite)]
    public IReadOnlyList<TightnessTest>? TightnessTests { get; init; }

    /// <summary>Every joint opened or loosened. An empty list: stated, none disturbed.</summary>
    [Items(100)]
    [Class(MemberClass.WorkDone)]
    [Ask("Which joints did you open or loosen (an empty list if none)?", While.OnSite)]
    public IReadOnlyList<DisturbedJoint>? DisturbedJoints { get; init; }

    /// <summary>Inspection and cleaning of the heat exchanger.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What was found and done at the heat exchanger?", While.Open)]
    public HeatExchanger? HeatExchanger { get; init; }

    /// <summary>Burner and electrodes.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What was found at the burner and the electrodes?", While.Open)]
    public Burner? Burner { get; init; }

    /// <summary>The water side: pressures, vessel, relief valve, inhibitor.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What was found on the water side?", While.OnSite)]
    public Water? Water { get; init; }

    /// <summary>Condensate trap and pipe.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What was found at the condensate trap and pipe?", While.OnSite)]
    public Condensate? Condensate { get; init; }

    /// <summary>The flue, its terminal and the case of the appliance.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What was found along the flue and at its terminal?", While.OnSite)]
    public Flue? Flue { get; init; }

    /// <summary>Air for combustion and cooling.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What air supply does the appliance have?", While.OnSite)]
    public Ventilation? Ventilation { get; init; }

    /// <summary>Electrical safety around the appliance.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What did the electrical checks show?", While.OnSite)]
    public Electrical? Electrical { get; init; }

    /// <summary>Safety devices proved or not. An empty list: stated, none tested.</summary>
    [Items(30)]
    [Class(MemberClass.Evidence)]
    [Ask("Which safety devices did you prove?", While.Running)]
    public IReadOnlyList<SafetyDevice>? SafetyDevices { get; init; }

    /// <summary>The carbon monoxide alarm.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is there a carbon monoxide alarm, and does it work?", While.OnSite)]
    public CoAlarm? CoAlarm { get; init; }

    /// <summary>The installation pipework as seen.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What state is the gas pipework in?", While.OnSite)]
    public Pipework? Pipework { get; init; }

    /// <summary>Parts fitted on this visit. An empty list: stated, none.</summary>
    [Items(200)]
    [Class(MemberClass.WorkDone)]
    [Ask("Which parts did you fit (an empty list if none)?", While.Paper)]
    public IReadOnlyList<FittedPart>? PartsFitted { get; init; }

    /// <summary>A gas escape, known or suspected.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("Was a gas escape known or suspected?", While.OnSite)]
    public Escape? Escape { get; init; }

    /// <summary>Only of a new or moved boiler.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What was recorded at commissioning?", While.Paper)]
    public Commissioning? Commissioning { get; init; }

    /// <summary>Defects as the engineer classed them. An empty list: stated, none found.</summary>
    [Items(100)]
    [Class(MemberClass.Volunteered)]
    [Ask("Which defects did you find (an empty list if none)?", While.OnSite)]
    public IReadOnlyList<Defect>? Defects { get; init; }

    /// <summary>The visit before this one. Absent: looked up in the stored history.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("When was the visit before this one, and what was read?", While.Paper)]
    public PreviousVisit? PreviousVisit { get; init; }

    /// <summary>Signatures, copies and dates.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Which papers were signed, handed over and dated?", While.Paper)]
    public Paperwork? Paperwork { get; init; }
}
