using System.Globalization;
using System.Text;
using Findings;

namespace Storage;

/// <summary>One visit in the history of an appliance, with what had been said of it.</summary>
public sealed class TimelineVisit
{
    /// <summary>The evaluation that counts for this visit.</summary>
    public required string EvaluationId { get; init; }

    /// <summary>The caller's own id of the record.</summary>
    public required string RecordId { get; init; }

    /// <summary>When it was said (RFC 3339, UTC).</summary>
    public required DateTimeOffset SaidAt { get; init; }

    /// <summary>By whose law.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>From which day deadlines were seen.</summary>
    public required DateOnly LookedAtOn { get; init; }

    /// <summary>Version of the rules that judged.</summary>
    public required string RuleSetVersion { get; init; }

    /// <summary>What the record showed.</summary>
    public required OverallOutcome Outcome { get; init; }

    /// <summary>Answers by outcome.</summary>
    public required OutcomeCounts Counts { get; init; }

    /// <summary>What the rules over history read of it.</summary>
    public required PastVisit Facts { get; init; }
}

/// <summary>One evaluation of a record of an appliance.</summary>
public sealed class ApplianceEvaluation
{
    /// <summary>Its id.</summary>
    public required string EvaluationId { get; init; }

    /// <summary>The caller's own id of the record.</summary>
    public required string RecordId { get; init; }

    /// <summary>Maker on the plate.</summary>
    public string? Maker { get; init; }

    /// <summary>When the visit ended (RFC 3339, UTC).</summary>
    public required DateTimeOffset FinishedAt { get; init; }

    /// <summary>When the service evaluated (RFC 3339, UTC).</summary>
    public required DateTimeOffset EvaluatedAt { get; init; }

    /// <summary>What the record showed.</summary>
    public required OverallOutcome Outcome { get; init; }

    /// <summary>The evaluation of the corrected record that had superseded it; absent while none had.</summary>
    public string? SupersededBy { get; init; }
}

/// <summary>A place in the list of an appliance's evaluations.</summary>
/// <param name="FinishedAt">Finish of the last visit shown.</param>
/// <param name="EvaluationId">Its evaluation.</param>
public sealed record EvaluationCursor(DateTimeOffset FinishedAt, string EvaluationId)
{
    /// <summary>As a text that means something only to this service.</summary>
    public string ToText() => Convert.ToBase64String(Encoding.UTF8.GetBytes($"{Database.TextOf(FinishedAt)} {EvaluationId}")).TrimEnd('=');

    /// <summary>Reads such a text.</summary>
    public static bool TryRead(string text, out EvaluationCursor? cursor)
    {
        ArgumentNullException.ThrowIfNull(text);
        cursor = null;
        var bytes = new byte[text.Length];
        if (Convert.TryFromBase64String(text.PadRight((text.Length + 3) / 4 * 4, '='), bytes, out var length)
            && Encoding.UTF8.GetString(bytes, 0, length).Split(' ') is [var moment, var evaluationId]
            && DateTimeOffset.TryParse(moment, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var finishedAt))
            cursor = new EvaluationCursor(finishedAt, evaluationId);
        return cursor?.ToText() == text;
    }
}
