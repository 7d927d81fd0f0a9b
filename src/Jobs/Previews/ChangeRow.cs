using System.Text.Json.Serialization;
using Storage;
using Wire;

namespace Jobs.Previews;

/// <summary>What becomes of a finding.</summary>
[JsonConverter(typeof(WireEnumConverter<ChangeKind>))]
public enum ChangeKind
{
    /// <summary>The candidate finds it, and the rules in force do not.</summary>
    New,

    /// <summary>Both find it, with another outcome, limit or gap.</summary>
    Changed,

    /// <summary>The rules in force find it, and the candidate does not.</summary>
    Gone,

    /// <summary>Both find the same. These are counted and not listed.</summary>
    Unchanged,

    /// <summary>No finding: the evaluation could not be judged anew; message says why.</summary>
    NotJudged,
}

/// <summary>A finding that a candidate would bring, change or take away.</summary>
public sealed record ChangeRow
{
    /// <summary>Number of the evaluation among those looked at, from 1.</summary>
    public required long Line { get; init; }

    /// <summary>Which of the evaluation's rows it is.</summary>
    [JsonIgnore]
    public int Ordinal { get; init; }

    /// <summary>What becomes of the finding.</summary>
    public required ChangeKind Change { get; init; }

    /// <summary>Path of the stored evaluation; its record is under it.</summary>
    // Here its id; whoever answers puts the path in its place.
    public required string Evaluation { get; init; }

    /// <summary>The caller's id of the record; empty where it is not known, as in all texts that follow.</summary>
    public required string RecordId { get; init; }

    /// <summary>Day of the visit.</summary>
    public DateOnly? FinishedOn { get; init; }

    /// <summary>The same as it is stored.</summary>
    internal string StoredDay
    {
        init => FinishedOn = value.Length > 0 ? Database.DayOf(value) : null;
    }

    /// <summary>Maker of the appliance.</summary>
    public required string Maker { get; init; }

    /// <summary>Its model.</summary>
    public required string Model { get; init; }

    /// <summary>Its serial number.</summary>
    public required string SerialNumber { get; init; }

    /// <summary>The engineer's licence number.</summary>
    public required string Engineer { get; init; }

    /// <summary>The rule.</summary>
    public required string RuleId { get; init; }

    /// <summary>Its subject area.</summary>
    public required string Topic { get; init; }

    /// <summary>JSON Pointer of what is judged; empty for the whole visit.</summary>
    public required string Subject { get; init; }

    /// <summary>Outcome by the candidate: unsafe, error, missing or advisory; empty of a finding that is gone.</summary>
    public required string Outcome { get; init; }

    /// <summary>Outcome by the rules in force; empty of a new finding.</summary>
    public required string OutcomeBefore { get; init; }

    /// <summary>What the candidate says; empty of a finding that is gone.</summary>
    public required string Message { get; init; }

    /// <summary>What the rules in force say; empty of a new finding.</summary>
    public required string MessageBefore { get; init; }
}

/// <summary>Which rows.</summary>
/// <param name="Change">Only of this change.</param>
/// <param name="Outcome">Only of this outcome by the candidate, or, of findings that are gone, by the rules in force.</param>
/// <param name="RuleId">Only of this rule.</param>
/// <param name="Engineer">Only of this engineer.</param>
/// <param name="Month">Only of visits in this month (yyyy-MM).</param>
public sealed record ChangeQuery(string? Change, string? Outcome, string? RuleId, string? Engineer, string? Month);
