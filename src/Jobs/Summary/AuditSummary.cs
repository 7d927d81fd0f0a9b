using System.Text.Json.Serialization;

namespace Jobs.Summary;

/// <summary>What a whole audit shows. It says what the records show; it never says that a boiler is safe.</summary>
public sealed class AuditSummary
{
    /// <summary>From which day deadlines are seen: the day (UTC) on which the audit started.</summary>
    public required DateOnly LookedAtOn { get; init; }

    /// <summary>How many records there were.</summary>
    public required RecordCounts Records { get; init; }

    /// <summary>The first fault of the first record that could not be judged; absent where each could, and of what an older version summed up.</summary>
    public FirstFault? FirstFault { get; init; }

    /// <summary>Judged records by outcome, without those that are superseded.</summary>
    public required OverallCounts Outcomes { get; init; }

    /// <summary>Share (0 to 1) of the judged records that are not superseded that leave no question open and for which every rule ran; absent when none was judged.</summary>
    public decimal? CompletenessRate { get; init; }

    /// <summary>The rules that judged, with how many records each set judged.</summary>
    public required IReadOnlyList<RuleSetTally> RuleSets { get; init; }

    /// <summary>Findings by subject area, most dangerous first.</summary>
    public required SummaryTable<FindingTally> Topics { get; init; }

    /// <summary>Findings by rule.</summary>
    public required SummaryTable<FindingTally> Rules { get; init; }

    /// <summary>Records by the engineer's licence number.</summary>
    public required SummaryTable<RecordTally> Engineers { get; init; }

    /// <summary>Records by maker and model.</summary>
    public required SummaryTable<RecordTally> Models { get; init; }

    /// <summary>Records by serial number of each instrument used.</summary>
    public required SummaryTable<RecordTally> Instruments { get; init; }

    /// <summary>Records with anything unsafe, missing or advisory, worst first: immediate dangers, then by how much is unsafe.</summary>
    public required SummaryTable<WorstAppliance> WorstAppliances { get; init; }

    /// <summary>CO/CO2 ratios of the flue readings taken after the work; absent of an audit that ended before they were counted.</summary>
    public RatioDistribution? CoCo2Ratios { get; init; }

    /// <summary>Duties whose last day has passed, oldest first.</summary>
    public required SummaryTable<DueEntry> Overdue { get; init; }

    /// <summary>Duties due within 60 days, next first.</summary>
    public required SummaryTable<DueEntry> SoonDue { get; init; }

    /// <summary>The usual cautions.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}

/// <summary>The first rows of a table, and how many there are in all.</summary>
public sealed class SummaryTable<T>
{
    /// <summary>How many rows the whole table has.</summary>
    public required int Total { get; init; }

    /// <summary>The first of them, at most 500.</summary>
    public required IReadOnlyList<T> Rows { get; init; }
}

/// <summary>How many records an audit has.</summary>
public sealed class RecordCounts
{
    /// <summary>Records read.</summary>
    public required long Read { get; init; }

    /// <summary>Records judged so far.</summary>
    public required long Judged { get; init; }

    /// <summary>Records that cannot be judged, each reported with every fault.</summary>
    public required long Rejected { get; init; }

    /// <summary>Of the judged, those that a later correction in the same audit replaces: all other counts leave them out. Absent while the audit runs.</summary>
    public long? Superseded { get; init; }
}

/// <summary>Which rules judged how many records.</summary>
[JsonConverter(typeof(RuleSetTallyConverter))]
public sealed class RuleSetTally
{
    /// <summary>Name of the rule set.</summary>
    public required string Id { get; init; }

    /// <summary>Its version.</summary>
    public required string Version { get; init; }

    /// <summary>The hash of what its rules demand.</summary>
    public required string LawHash { get; init; }

    /// <summary>The hash of the program that judged by it.</summary>
    public required string CodeHash { get; init; }

    /// <summary>How many records.</summary>
    public required int Records { get; init; }
}
