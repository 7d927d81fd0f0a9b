using Records.Metadata;

namespace Records;

/// <summary>Who did the work; numbers only, no names.</summary>
public sealed class Engineer
{
    /// <summary>The engineer's licence number on the national register.</summary>
    [Text(50)]
    [Class(MemberClass.Identity)]
    [Ask("What is the engineer's licence number?", While.Paper)]
    public string? LicenceNumber { get; init; }

    /// <summary>The business's number on the national register.</summary>
    [Text(50)]
    [Class(MemberClass.Identity)]
    [Ask("What is the registration number of the business?", While.Paper)]
    public string? BusinessNumber { get; init; }

    /// <summary>The work categories held. An empty list: stated, none.</summary>
    [Items(50)]
    [Class(MemberClass.Evidence)]
    [Ask("Which work categories does the engineer hold?", While.Paper)]
    public IReadOnlyList<EngineerCategory>? Categories { get; init; }

    /// <summary>Licence number of the supervising engineer. Absent: worked unsupervised, or not recorded.</summary>
    [Text(50)]
    [Class(MemberClass.Identity)]
    [Ask("What is the licence number of the supervising engineer?", While.Paper)]
    public string? SupervisedBy { get; init; }
}
