using System.Data.Common;
using Dapper;
using Findings;
using Jobs.Summary;
using Records;
using Storage;

namespace Jobs.Queue;

/// <summary>Writes what was judged.</summary>
public sealed class ResultStore(Database database, AuditVisits visits)
{
    private const string Done = """
        UPDATE audit_chunks SET is_done = 1, claim = NULL, lease_until = NULL, judged = @judged, rejected = @rejected, payload = @nothing, sums = @sums
        WHERE tenant = @tenant AND audit_id = @auditId AND chunk = @number AND claim = @claim AND is_done = 0
            AND EXISTS (SELECT 1 FROM audits WHERE tenant = @tenant AND audit_id = @auditId AND state = 'running')
        """;

    private static readonly string[] LineColumns =
        ["tenant", "audit_id", "line", "record_id", "maker", "serial_number", "finished_at", "landlord", "landlord_check", "superseded_by", "premises", "visited_on", "outcome", "result_hash", "record", "answer"];

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
        var findingRows = lines.SelectMany(line => FindingRowsOf(chunk, line)).ToList();
        var visitRows = visits.RowsOf(chunk, lines);
        return CompleteAsync(
            chunk,
            sums.Judged,
            sums.Rejected,
            sums.ToBytes(),
            async transaction =>
            {
                await transaction.InsertAsync("audit_lines", LineColumns, lineRows, cancel);
                await transaction.InsertAsync("audit_findings", FindingColumns, findingRows, cancel);
                await visitRows.WriteAsync(transaction, cancel);
            },
            cancel);
    }

    /// <summary>Marks a chunk as done and writes its results with it; false, and nothing is written, when it is no longer the holder's or the job was cancelled.</summary>
    internal Task<bool> CompleteAsync(Chunk chunk, int judged, int rejected, byte[] sums, Func<DbTransaction, Task> write, CancellationToken cancel)
    {
        var done = new
        {
            tenant = chunk.Tenant.Name,
            auditId = chunk.AuditId,
            number = chunk.Number,
            claim = chunk.Claim,
            judged,
            rejected,
            nothing = Array.Empty<byte>(),
            sums = Packed.Of(sums),
        };
        return database.WriteAsync(
            async transaction =>
            {
                if (await transaction.Connection!.ExecuteAsync(new CommandDefinition(Done, done, transaction, cancellationToken: cancel)) != 1)
                    return false;
                await write(transaction);
                return true;
            },
            cancel);
    }

    /// <summary>Where and when, as it is kept of a record; both empty where nothing can be read.</summary>
    internal static (string Premises, string VisitedOn) PlaceOf(ServiceRecord? record) =>
        (record?.Premises?.Reference ?? "", record is null ? "" : Database.TextOf(record.FinishedAt.Date));

    private object?[] LineRow(Chunk chunk, JudgedLine judged)
    {
        var (line, record) = (judged.Line, judged.Record);
        var (premises, visitedOn) = PlaceOf(record);
        var shown = line with { Evaluation = (line.Evaluation is { } whole ? whole with { EvaluationId = EvaluationIds.Of(chunk.AuditId, line.Line) } : null)?.Show(Include.Problems) };
        return
        [
            chunk.Tenant.Name, chunk.AuditId, line.Line, line.RecordId, record?.Appliance.Maker, record?.Appliance.SerialNumber,
            record is null ? null : Database.TextOf(record.FinishedAt.Value), record is null ? null : visits.Law.IsLandlords(record) ? 1 : 0,
            record is null ? null : line.Evaluation is { } said && visits.Law.IsLandlordsCheck(record, said) ? 1 : 0, line.SupersededBy, premises, visitedOn,
            line.Outcome, line.Evaluation?.ResultHash,
            Packed.Of(judged.Utf8.Span), Packed.Of(WireJson.ToBytes(shown, AuditJson.Default.AuditLine)),
        ];
    }

    private static IEnumerable<object?[]> FindingRowsOf(Chunk chunk, JudgedLine judged) => FindingRows.Of(judged).Select(row => new object?[]
    {
        chunk.Tenant.Name, chunk.AuditId, row.Line, row.Ordinal, row.RecordId ?? "", row.Maker ?? "", row.Model ?? "", row.SerialNumber ?? "", row.Engineer ?? "",
        row.RuleId ?? "", row.Topic ?? "", row.Grade, row.Outcome, row.Subject, row.ToStored(),
    });
}
