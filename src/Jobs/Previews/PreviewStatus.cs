using System.Text.Json;
using System.Text.Json.Serialization;
using Findings;
using Jobs.Summary;

namespace Jobs.Previews;

/// <summary>A preview of a change of rules, and how far it is.</summary>
public sealed record PreviewStatus
{
    /// <summary>Its id.</summary>
    public required string PreviewId { get; init; }

    /// <summary>How far it is.</summary>
    public required AuditState State { get; init; }

    /// <summary>When it was accepted (RFC 3339, UTC).</summary>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <summary>When the first evaluation was taken up.</summary>
    public DateTimeOffset? StartedAt { get; init; }

    /// <summary>When it ended.</summary>
    public DateTimeOffset? FinishedAt { get; init; }

    /// <summary>The day whose law is to count; absent: the day of each evaluation.</summary>
    public DateOnly? AsOf { get; init; }

    /// <summary>First day of the visits that are looked at; absent: all.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Their last day; absent: all.</summary>
    public DateOnly? To { get; init; }

    /// <summary>How many limits the candidate sets in place of those in force; absent: it leaves them as they are.</summary>
    public int? Overrides { get; init; }

    /// <summary>How many evaluations: to be looked at, judged anew, and those that could not be.</summary>
    public required RecordCounts Evaluations { get; init; }

    /// <summary>Evaluations done in a second, since the first was taken up.</summary>
    public decimal? RatePerSecond { get; init; }

    /// <summary>When it will end at this rate.</summary>
    public DateTimeOffset? ExpectedEnd { get; init; }

    /// <summary>Why it failed.</summary>
    public string? Reason { get; init; }

    /// <summary>What would change; once it is completed.</summary>
    public PreviewSummary? Summary { get; init; }
}

/// <summary>What previews say, as JSON: in the same form as evaluations.</summary>
[JsonSerializable(typeof(PreviewStatus))]
[JsonSerializable(typeof(Candidate))]
[JsonSerializable(typeof(ChangeRow))]
[JsonSerializable(typeof(EvaluationContext))]
public sealed partial class PreviewJson : JsonSerializerContext
{
    /// <summary>The one form in which answers are written and stored.</summary>
    public static PreviewJson Wire { get; } = new(new JsonSerializerOptions(EvaluationJson.Wire.Options) { TypeInfoResolver = null });
}
