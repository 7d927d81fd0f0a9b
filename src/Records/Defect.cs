using Records.Metadata;
using Records.Values;

namespace Records;

/// <summary>One defect as the engineer classed it. The class is the engineer's own and is never lowered.</summary>
public sealed class Defect
{
    /// <summary>What is wrong, in words.</summary>
    [Text(1000)]
    [Class(MemberClass.Volunteered)]
    [Ask("What is the defect?", While.Paper)]
    public string? Description { get; init; }

    /// <summary>Where it is.</summary>
    [Text(200)]
    [Class(MemberClass.Volunteered)]
    [Ask("Where is the defect?", While.Paper)]
    public string? Location { get; init; }

    /// <summary>When it was found, RFC 3339 with offset.</summary>
    [Class(MemberClass.Time)]
    [Ask("When was the defect found (date, time and offset)?", While.OnSite)]
    public Timestamp? FoundAt { get; init; }

    /// <summary>Topic of the finding that this defect answers, such as flue.</summary>
    [Text(50)]
    [Class(MemberClass.Volunteered)]
    [Ask("Which topic does the defect belong to?", While.Paper)]
    public string? Topic { get; init; }

    /// <summary>JSON Pointer to the part of the record that it is about; empty for the whole visit.</summary>
    [Text(300, MayBeEmpty = true)]
    [Class(MemberClass.Volunteered)]
    [Ask("Which part of the record is the defect about?", While.Paper)]
    public string? Subject { get; init; }

    /// <summary>Whether it is a defect of this appliance, of another one or of the supply. Absent: of this appliance.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the defect of this appliance, of another appliance or of the supply?", While.OnSite)]
    public DefectConcern? Concerns { get; init; }

    /// <summary>The engineer's own class; a floor for the outcome.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("How do you class the defect?", While.OnSite)]
    public DefectClass? Class { get; init; }

    /// <summary>Who gave a second opinion on the class, by licence number or other reference; no name.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Who gave a second opinion on the class of the defect?", While.Paper)]
    public string? SecondOpinionBy { get; init; }

    /// <summary>What brought it about.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("What caused the defect?", While.Paper)]
    public DefectCause? Cause { get; init; }

    /// <summary>How it could do harm.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("How could the defect do harm?", While.Paper)]
    public DefectMechanism? Mechanism { get; init; }

    /// <summary>What was done about it.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("What was done about the defect?", While.OnSite)]
    public DefectAction? Action { get; init; }

    /// <summary>What was isolated because of it.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Where was the danger isolated?", While.OnSite)]
    public IsolationPoint? IsolatedAt { get; init; }

    /// <summary>When it was looked at or measured again and found right, RFC 3339 with offset.</summary>
    [Class(MemberClass.Time)]
    [Ask("When was the defect examined again (date, time and offset)?", While.OnSite)]
    public Timestamp? ReexaminedAt { get; init; }

    /// <summary>Whether the responsible person let the engineer act.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was permission given to make the appliance safe?", While.OnSite)]
    public Consent? Permission { get; init; }

    /// <summary>Whether the user was told not to use the appliance.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the user told not to use the appliance?", While.OnSite)]
    public bool? UserToldNotToUse { get; init; }

    /// <summary>Whether a warning label was fixed.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was a warning label fixed?", While.OnSite)]
    public bool? Labelled { get; init; }

    /// <summary>Number of the warning notice.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("What is the number of the warning notice?", While.Paper)]
    public string? NoticeNumber { get; init; }

    /// <summary>Whether a copy of the notice was left.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was a copy of the notice left?", While.OnSite)]
    public bool? CopyLeft { get; init; }

    /// <summary>Whether the responsible person signed it.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Did the responsible person sign the notice?", While.OnSite)]
    public bool? UserSigned { get; init; }

    /// <summary>To whom the defect was reported.</summary>
    [Text(200)]
    [Class(MemberClass.Evidence)]
    [Ask("To whom was the defect reported?", While.Paper)]
    public string? ReportedTo { get; init; }

    /// <summary>Who was told of it; decides, where reportedTo is free text and does not. An empty list: stated, nobody.</summary>
    [Items(20)]
    [Class(MemberClass.Evidence)]
    [Ask("Who was told of the defect?", While.OnSite)]
    public IReadOnlyList<ToldParty>? Told { get; init; }

    /// <summary>Reference given by the gas emergency provider or supplier.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Which reference did the gas emergency provider give?", While.Paper)]
    public string? EmergencyReference { get; init; }

    /// <summary>Day on which the responsible person or the owner was told.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was the responsible person told of the defect?", While.Paper)]
    public DateOnly? NotifiedOn { get; init; }

    /// <summary>Whether the defect must be reported to the authority.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Must the defect be reported to the authority, and was it?", While.Paper)]
    public ReportableDecision? Reportable { get; init; }
}
