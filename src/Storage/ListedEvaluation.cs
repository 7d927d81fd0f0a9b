using System.Text.Json.Serialization;
using Findings;
using Records;
using Wire;

namespace Storage;

/// <summary>Which evaluations a list is to show; absent: whatever it is.</summary>
public sealed record EvaluationQuery
{
    /// <summary>The caller's own id of the record.</summary>
    public string? RecordId { get; init; }

    /// <summary>The first day of visits, by UTC.</summary>
    public DateOnly? From { get; init; }

    /// <summary>The last one.</summary>
    public DateOnly? To { get; init; }

    /// <summary>What the record showed.</summary>
    public OverallOutcome? Outcome { get; init; }

    /// <summary>May it be closed?</summary>
    public ListedClosing? Closing { get; init; }

    /// <summary>Licence number of the engineer.</summary>
    public string? Engineer { get; init; }

    /// <summary>Reference of the premises.</summary>
    public string? Premises { get; init; }

    /// <summary>Serial number of the appliance.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>Its maker.</summary>
    public string? Maker { get; init; }

    /// <summary>Only those in whose place another counts, or only those that count.</summary>
    public bool? Superseded { get; init; }
}

/// <summary>Whether a record may be closed, in a list.</summary>
[JsonConverter(typeof(WireEnumConverter<ListedClosing>))]
public enum ListedClosing
{
    /// <summary>It may.</summary>
    Allowed,

    /// <summary>Something stands in the way.</summary>
    Held,
}

/// <summary>One evaluation in a list.</summary>
public sealed record ListedEvaluation
{
    /// <summary>Number of its last change: it was made, or another took its place. Numbers only grow.</summary>
    public required long Change { get; init; }

    /// <summary>Its id.</summary>
    public required string EvaluationId { get; init; }

    /// <summary>The caller's own id of the record.</summary>
    public required string RecordId { get; init; }

    /// <summary>The job; absent where an older version of the service stored a record that this one cannot read.</summary>
    public JobType? JobType { get; init; }

    /// <summary>Maker on the plate.</summary>
    public string? Maker { get; init; }

    /// <summary>Serial number of the appliance.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>Reference of the premises.</summary>
    public string? Premises { get; init; }

    /// <summary>Licence number of the engineer.</summary>
    public string? Engineer { get; init; }

    /// <summary>When the visit ended (RFC 3339, UTC).</summary>
    public required DateTimeOffset FinishedAt { get; init; }

    /// <summary>When the service evaluated (RFC 3339, UTC).</summary>
    public required DateTimeOffset EvaluatedAt { get; init; }

    /// <summary>What the record showed.</summary>
    public required OverallOutcome Outcome { get; init; }

    /// <summary>Whether the job may be closed with this record.</summary>
    public required ListedClosing Closing { get; init; }

    /// <summary>As what it closes, or would close: visit, repair, check, service or installation.</summary>
    public string? ClosesAs { get; init; }

    /// <summary>Does another evaluation count in its place: of a record that corrects this one, or of the same visit sent again?</summary>
    public required bool Superseded { get; init; }

    /// <summary>That other one, where it is known.</summary>
    public string? SupersededBy { get; init; }
}

/// <summary>By what one visit is listed, and known again, as it is stored.</summary>
/// <param name="Outcome">What the record showed.</param>
/// <param name="Closing">May it be closed?</param>
/// <param name="ClosesAs">As what.</param>
/// <param name="JobType">The job; null where the present reader refuses the record.</param>
/// <param name="Engineer">Licence number of the engineer; empty where it is not recorded, as all that follows.</param>
/// <param name="EngineerKey">The same as it is compared.</param>
/// <param name="Premises">Reference of the premises.</param>
/// <param name="PremisesKey">The same as it is compared.</param>
/// <param name="StartedAt">When the visit began.</param>
internal sealed record ListColumns(
    string Outcome, string Closing, string? ClosesAs, string? JobType, string Engineer, string EngineerKey, string Premises, string PremisesKey, string StartedAt)
{
    /// <summary>Of what is not shown.</summary>
    public static ListColumns None { get; } = new("", "", null, null, "", "", "", "", "");

    public static ListColumns Of(ServiceRecord? record, Evaluation evaluation)
    {
        var (engineer, premises) = (record?.Engineer?.LicenceNumber ?? "", record?.Premises?.Reference ?? "");
        return new(
            WireNames.Of(evaluation.Outcome),
            WireNames.Of(evaluation.Closing.Allowed ? ListedClosing.Allowed : ListedClosing.Held),
            evaluation.Closing.ClosesAs,
            WireNames.Of(record?.JobType),
            engineer,
            VisitKey.OfName(engineer),
            premises,
            VisitKey.OfName(premises),
            record is null ? "" : VisitKey.OfStart(record));
    }
}
