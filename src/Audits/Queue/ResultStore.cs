using System.Text.Json;
using Dapper;
using Findings;
using ServiceRecords;

namespace Audits;

/// <summary>Writes what was judged.</summary>
public sealed class ResultStore(Database database)
{
    private const string Done = """
        UPDATE audit_chunks SET is_done = 1, claim = NULL, lease_until = NULL, judged = @judged, rejected = @rejected, payload = @nothing, sums = @sums
        WHERE tenant = @tenant AND audit_id = @auditId AND chunk = @number AND claim = @claim AND is_done = 0
            AND EXISTS (SELECT 1 FROM audits WHERE tenant = @tenant AND audit_id = @auditId AND state = 'running')
        """;

    private static readonly string[] LineColumns =
        ["tenant", "audit_id", "line", "record_id", "maker", "serial_number", "finished_at", "landlord", "landlord_check", "superseded_by", "outcome", "result_hash", "record", "answer"];

    private static readonly string[] FindingColumns =
    [
        "tenant", "audit_id", "line", "ordinal", "record_id", "maker", "model", "serial_number", "engineer",
        "rule_id", "topic", "grade", "outcome", "subject", "message",
    ];

    /// <summary>Writes the results of a chunk; false, and nothing is written, when it is no longer the holder's or the audit was cancelled.</summary>
    internal Task<bool> CompleteAsync(Chunk chunk, IReadOnlyList<JudgedLine> lines, SummaryParts sums, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(chunk);
        ArgumentNullException.ThrowIfNull(sums);

        // All that takes time is done before the transaction begins: in SQLite it keeps every other writer waiting.
        var lineRows = lines.Select(line => LineRow(chunk, line)).ToList();
        var findingRows = lines.SelectMany(line => FindingRows(chunk, line)).ToList();
        var done = new
        {
            tenant = chunk.Tenant.Name,
            auditId = chunk.AuditId,
            number = chunk.Number,
            claim = chunk.Claim,
            judged = sums.Judged,
            rejected = sums.Rejected,
            nothing = Array.Empty<byte>(),
            sums = Packed.Of(sums.ToBytes()),
        };
        return database.WriteAsync(
            async transaction =>
            {
                if (await transaction.Connection!.ExecuteAsync(new CommandDefinition(Done, done, transaction, cancellationToken: cancel)) != 1)
                    return false;
                await transaction.InsertAsync("audit_lines", LineColumns, lineRows, cancel);
                await transaction.InsertAsync("audit_findings", FindingColumns, findingRows, cancel);
                return true;
            },
            cancel);
    }

    private static object?[] LineRow(Chunk chunk, JudgedLine judged)
    {
        var (line, record) = (judged.Line, judged.Record);
        var shown = line with { Evaluation = line.Evaluation?.Show(Include.Problems) };
        return
        [
            chunk.Tenant.Name, chunk.AuditId, line.Line, line.RecordId, record?.Appliance.Maker, record?.Appliance.SerialNumber,
            record is null ? null : Database.TextOf(record.FinishedAt.Value), record is null ? null : record.IsLandlords() ? 1 : 0,
            record is null ? null : record.IsLandlordsCheck() ? 1 : 0, line.SupersededBy,
            line.Evaluation is { } evaluation ? WireNames.Of(evaluation.Outcome) : "rejected", line.Evaluation?.ResultHash,
            Packed.Of(judged.Utf8.Span), Packed.Of(JsonSerializer.SerializeToUtf8Bytes(shown, AuditJson.Wire.AuditLine)),
        ];
    }

    private static IEnumerable<object?[]> FindingRows(Chunk chunk, JudgedLine judged)
    {
        var appliance = judged.Record?.Appliance;
        object?[] Row(int ordinal, string ruleId, string topic, string grade, string outcome, string subject, string message) =>
        [
            chunk.Tenant.Name, chunk.AuditId, judged.Line.Line, ordinal, judged.Line.RecordId ?? "", appliance?.Maker ?? "", appliance?.Model ?? "",
            appliance?.SerialNumber ?? "", judged.Record?.Engineer?.LicenceNumber ?? "", ruleId, topic, grade, outcome, subject, message,
        ];

        var faults = judged.Line.Problem?.Errors ?? [];
        return (judged.Line.Evaluation?.Findings ?? []).Where(finding => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable))
            .Select((finding, index) => Row(index, finding.RuleId, finding.Topic, ((int)finding.Outcome).ToString(System.Globalization.CultureInfo.InvariantCulture), WireNames.Of(finding.Outcome), finding.Subject, finding.Message ?? finding.Title))
            .Concat(faults.Select((fault, index) => Row(index, "", "", FindingRow.RejectedGrade, FindingRow.Rejected, fault.Pointer, $"{fault.Code}: {fault.Detail}")));
    }
}
