using Findings;
using Records;
using Storage;

namespace Jobs.Summary;

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

    /// <summary>Findings for which evidence is missing that must be there.</summary>
    public int Missing { get; set; }

    /// <summary>Findings for which evidence is missing that should be there; 0 in what an older version summed up.</summary>
    public int NotLookedAt { get; set; }

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

    /// <summary>The caller's reference of the premises; absent where it is not recorded, as all that follows, and of what an older version summed up.</summary>
    public string? Premises { get; init; }

    /// <summary>Day of the visit.</summary>
    public DateOnly? VisitedOn { get; init; }

    /// <summary>The engineer's licence number.</summary>
    public string? Engineer { get; init; }

    /// <summary>Maker of the appliance.</summary>
    public string? Maker { get; init; }

    /// <summary>Its model.</summary>
    public string? Model { get; init; }

    /// <summary>Its serial number.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>May the job be closed on this record?</summary>
    public required bool ClosingAllowed { get; init; }

    /// <summary>The gravest class that its unsafe findings would be expected to get; absent where there is none.</summary>
    public ExpectedClass? ExpectedClass { get; init; }

    /// <summary>What became of the worst danger; absent where there is none, as all that follows of it.</summary>
    public DangerState? Danger { get; init; }

    /// <summary>Does the record show everything done that the dangers call for?</summary>
    public bool? Handled { get; init; }

    /// <summary>How many findings, by outcome.</summary>
    public required FindingCounts Counts { get; init; }

    internal static WorstAppliance Of(long line, Evaluation evaluation, ServiceRecord? record) => new()
    {
        Line = line,
        RecordId = evaluation.RecordId,
        Premises = record?.Premises?.Reference,
        VisitedOn = record?.FinishedAt.Date,
        Engineer = record?.Engineer?.LicenceNumber,
        Maker = record?.Appliance.Maker,
        Model = record?.Appliance.Model,
        SerialNumber = record?.Appliance.SerialNumber,
        ClosingAllowed = evaluation.Closing.Allowed,
        ExpectedClass = evaluation.Findings.Max(finding => finding.Outcome == Outcome.Unsafe ? finding.ExpectedClass : null),
        Danger = evaluation.Situation?.State,
        Handled = evaluation.Situation?.Handled,
        Counts = new FindingCounts { Unsafe = evaluation.Counts.Unsafe, Error = evaluation.Counts.Error, Missing = evaluation.Counts.Missing, NotLookedAt = evaluation.Counts.NotLookedAt, Advisory = evaluation.Counts.Advisory },
    };
}

/// <summary>The first fault of an audit: that of the first record that could not be judged.</summary>
public sealed class FirstFault
{
    /// <summary>Line of the record.</summary>
    public required long Line { get; init; }

    /// <summary>The caller's id of it, where one could be read.</summary>
    public string? RecordId { get; init; }

    /// <summary>JSON Pointer into the record as a URI fragment; <c>#</c> is the whole record.</summary>
    public required string Pointer { get; init; }

    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>What is wrong and what was expected.</summary>
    public required string Detail { get; init; }

    internal static FirstFault? Of(AuditLine line) => line.Problem?.Errors is [var fault, ..]
        ? new FirstFault { Line = line.Line, RecordId = line.RecordId, Pointer = fault.Pointer, Code = fault.Code, Detail = fault.Detail }
        : null;

    /// <summary>That of the earlier line.</summary>
    internal static FirstFault? Earlier(FirstFault? one, FirstFault? other) => one is null || other?.Line < one.Line ? other : one;
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
