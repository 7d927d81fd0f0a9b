using System.Text.Json.Serialization;
using Jobs.Summary;
using Wire;

namespace Jobs;

/// <summary>How far an audit is.</summary>
[JsonConverter(typeof(WireEnumConverter<AuditState>))]
public enum AuditState
{
    /// <summary>Its records are stored; no one has begun to judge them.</summary>
    Queued,

    /// <summary>Its records are being judged.</summary>
    Running,

    /// <summary>Every record is judged or reported.</summary>
    Completed,

    /// <summary>It was cancelled; what had been judged by then stays.</summary>
    Cancelled,

    /// <summary>It cannot be completed; reason says why.</summary>
    Failed,
}

/// <summary>An audit and how far it is.</summary>
public sealed record AuditStatus
{
    /// <summary>Its id.</summary>
    public required string AuditId { get; init; }

    /// <summary>How far it is.</summary>
    public required AuditState State { get; init; }

    /// <summary>When it was accepted (RFC 3339, UTC).</summary>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <summary>When the first record was taken up.</summary>
    public DateTimeOffset? StartedAt { get; init; }

    /// <summary>When it ended.</summary>
    public DateTimeOffset? FinishedAt { get; init; }

    /// <summary>From which day deadlines are seen: the day (UTC) on which it was accepted.</summary>
    public required DateOnly LookedAtOn { get; init; }

    /// <summary>How many records.</summary>
    public required RecordCounts Records { get; init; }

    /// <summary>Records judged or reported in a second, since the first was taken up.</summary>
    public decimal? RatePerSecond { get; init; }

    /// <summary>When it will end at this rate.</summary>
    public DateTimeOffset? ExpectedEnd { get; init; }

    /// <summary>Why it failed.</summary>
    public string? Reason { get; init; }

    /// <summary>What it shows; once it is completed.</summary>
    public AuditSummary? Summary { get; init; }
}
