namespace Audits;

/// <summary>Judged records by outcome.</summary>
public sealed class OverallCounts
{
    /// <summary>Records that show a danger or cannot exclude one.</summary>
    public int Unsafe { get; set; }

    /// <summary>Records that lack evidence.</summary>
    public int Incomplete { get; set; }

    /// <summary>Complete records with points to mind.</summary>
    public int Advisory { get; set; }

    /// <summary>Records that show what the rules demand.</summary>
    public int Pass { get; set; }
}

/// <summary>Records of one engineer, model or instrument, by outcome.</summary>
public sealed class RecordTally
{
    /// <summary>Whose: a licence number, a maker with model, a serial number.</summary>
    public required string Key { get; init; }

    /// <summary>How many records, by outcome.</summary>
    public required OverallCounts Outcomes { get; init; }
}

/// <summary>Findings of one rule or subject area.</summary>
public sealed class FindingTally
{
    /// <summary>Id of the rule, or the subject area.</summary>
    public required string Key { get; init; }

    /// <summary>How many findings, by outcome.</summary>
    public required FindingCounts Counts { get; init; }
}

/// <summary>Findings by outcome; passes and what does not apply are left out.</summary>
public sealed class FindingCounts
{
    /// <summary>Unsafe findings.</summary>
    public int Unsafe { get; set; }

    /// <summary>Rules that failed to run.</summary>
    public int Error { get; set; }

    /// <summary>Findings for which the evidence is missing.</summary>
    public int Missing { get; set; }

    /// <summary>Advisory findings.</summary>
    public int Advisory { get; set; }
}

/// <summary>A record with anything to say of its appliance.</summary>
public sealed class WorstAppliance
{
    /// <summary>Line of the record.</summary>
    public required long Line { get; init; }

    /// <summary>The caller's id of it.</summary>
    public required string RecordId { get; init; }

    /// <summary>Maker of the appliance.</summary>
    public string? Maker { get; init; }

    /// <summary>Its model.</summary>
    public string? Model { get; init; }

    /// <summary>Its serial number.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>May the job be closed on this record?</summary>
    public required bool ClosingAllowed { get; init; }

    /// <summary>The gravest class that its unsafe findings would be expected to get; absent where there is none.</summary>
    public Findings.ExpectedClass? ExpectedClass { get; init; }

    /// <summary>How many findings, by outcome.</summary>
    public required FindingCounts Counts { get; init; }
}

/// <summary>A duty with its last day.</summary>
public sealed class DueEntry
{
    /// <summary>Line of the record.</summary>
    public required long Line { get; init; }

    /// <summary>The caller's id of it.</summary>
    public required string RecordId { get; init; }

    /// <summary>Maker of the appliance.</summary>
    public string? Maker { get; init; }

    /// <summary>Its serial number.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>The duty in words.</summary>
    public required string What { get; init; }

    /// <summary>Last day on which it can be done in time.</summary>
    public required DateOnly By { get; init; }

    /// <summary>The rule that watches it.</summary>
    public required string RuleId { get; init; }
}
