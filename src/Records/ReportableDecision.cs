using Records.Metadata;

namespace Records;

/// <summary>Whether a dangerous fitting must be reported to the authority.</summary>
public sealed class ReportableDecision
{
    /// <summary>The decision.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the defect reportable to the authority?", While.Paper)]
    public ReportDecision? Decision { get; init; }

    /// <summary>Why it was decided so.</summary>
    [Text(500)]
    [Class(MemberClass.Evidence)]
    [Ask("Why was it decided so?", While.Paper)]
    public string? Reason { get; init; }

    /// <summary>Day on which enough was known to decide.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was enough known to decide?", While.Paper)]
    public DateOnly? KnownOn { get; init; }

    /// <summary>Day of the report.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was the defect reported to the authority?", While.Paper)]
    public DateOnly? ReportedOn { get; init; }
}
