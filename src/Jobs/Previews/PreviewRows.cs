using System.Globalization;
using Jobs.Queue;
using Records;
using Storage;
using Wire;

namespace Jobs.Previews;

/// <summary>Rows of changed findings as they are written.</summary>
internal static class PreviewRows
{
    public const string Table = "preview_changes";

    public static readonly string[] Columns =
    [
        "tenant", "audit_id", "line", "ordinal", "change", "evaluation_id", "record_id", "finished_on", "maker", "model", "serial_number",
        "engineer", "rule_id", "topic", "subject", "outcome", "outcome_before", "message", "message_before",
    ];

    public static string MonthOf(DateOnly day) => day.ToString("yyyy-MM", CultureInfo.InvariantCulture);

    /// <summary>A row for each finding that does not stay as it is.</summary>
    public static IEnumerable<object?[]> Of(Chunk chunk, long line, string evaluationId, ServiceRecord record, IEnumerable<FindingChange> changes) => changes
        .Where(change => change.Kind != ChangeKind.Unchanged)
        .Select((change, ordinal) => new object?[]
        {
            chunk.Tenant.Name, chunk.AuditId, line, ordinal, WireNames.Of(change.Kind), evaluationId, record.RecordId, Database.TextOf(record.FinishedAt.Date),
            record.Appliance.Maker ?? "", record.Appliance.Model ?? "", record.Appliance.SerialNumber ?? "", record.Engineer?.LicenceNumber ?? "",
            change.Shown.RuleId, change.Shown.Topic, change.Shown.Subject,
            change.After is { } after ? WireNames.Of(after.Outcome) : "", change.Before is { } before ? WireNames.Of(before.Outcome) : "",
            change.After is { } says ? says.Message ?? says.Title : "", change.Before is { } said ? said.Message ?? said.Title : "",
        });

    /// <summary>The row of an evaluation that could not be judged anew.</summary>
    public static object?[] Of(Chunk chunk, long line, string evaluationId, string problem) =>
    [
        chunk.Tenant.Name, chunk.AuditId, line, 0, WireNames.Of(ChangeKind.NotJudged), evaluationId, "", "", "", "", "", "", "", "", "", "", "", problem, "",
    ];
}
