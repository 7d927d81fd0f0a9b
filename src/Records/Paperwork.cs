using Records.Metadata;

namespace Records;

/// <summary>Signatures, copies and dates; names and addresses are only yes or no.</summary>
public sealed class Paperwork
{
    /// <summary>Whether the engineer signed the record.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Did the engineer sign the record?", While.Paper)]
    public bool? EngineerSigned { get; init; }

    /// <summary>Whether the paper gives the name of the landlord or agent.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the record give the landlord's or agent's name?", While.Paper)]
    public bool? LandlordName { get; init; }

    /// <summary>Whether the paper gives their address.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the record give the landlord's or agent's address?", While.Paper)]
    public bool? LandlordAddress { get; init; }

    /// <summary>Whether the paper gives the address of the premises.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the record give the address of the premises?", While.Paper)]
    public bool? PremisesAddressGiven { get; init; }

    /// <summary>Day on which the occupier got a copy.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day did the occupier get a copy?", While.Paper)]
    public DateOnly? CopyToOccupierOn { get; init; }

    /// <summary>Whether it is displayed in the premises in place of a copy.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the record displayed instead of a copy?", While.Paper)]
    public bool? DisplayedInsteadOfCopy { get; init; }

    /// <summary>Day on which a new tenancy starts.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day does the new tenancy start?", While.Paper)]
    public DateOnly? NewTenancyStartsOn { get; init; }

    /// <summary>Day on which a new tenant got the last record.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day did the new tenant get a copy?", While.Paper)]
    public DateOnly? CopyToNewTenantOn { get; init; }

    /// <summary>Whether defects, or that there were none, are noted.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the record note the defects, or that there were none?", While.Paper)]
    public bool? DefectsNotedOrNone { get; init; }

    /// <summary>Whether the remedial work is noted.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the record note the work done?", While.Paper)]
    public bool? WorkNoted { get; init; }

    /// <summary>Whether the maker's instructions were left with the owner or occupier. Regulation 29 of the Gas Safety (Installation and Use) Regulations 1998.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were the maker's instructions left on the premises?", While.Paper)]
    public bool? InstructionsLeft { get; init; }

    /// <summary>Whether the record confirms that flue, air, pressure or heat input, and safe functioning were examined.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the record confirm the statutory examination of the appliance?", While.Paper)]
    public bool? ExaminationConfirmed { get; init; }

    /// <summary>Whether the record is kept electronically.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the record kept electronically?", While.Paper)]
    public bool? Electronic { get; init; }

    /// <summary>Day on which the occupier got the building regulations certificate of a new boiler.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day did the occupier get the building regulations certificate?", While.Paper)]
    public DateOnly? CertificateToOccupierOn { get; init; }

    /// <summary>Day on which the local authority was notified of a new boiler.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was the local authority notified?", While.Paper)]
    public DateOnly? AuthorityNotifiedOn { get; init; }

    /// <summary>Day by which the next visit is due.</summary>
    [Class(MemberClass.Time)]
    [Ask("By which day is the next visit due?", While.Paper)]
    public DateOnly? NextDueOn { get; init; }
}
