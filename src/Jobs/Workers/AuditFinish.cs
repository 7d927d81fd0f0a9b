using System.Text.Json;
using Dapper;
using Jobs.Previews;
using Jobs.Queue;
using Jobs.Summary;
using Storage;
using Visits.Judging;

namespace Jobs.Workers;

/// <summary>Ends an audit of which every chunk is done: adds the sums of the chunks up to the summary.</summary>
public sealed class AuditFinish(Database database, ComplianceEngine engine, TimeProvider clock)
{
    private const string SelectReady = """
        SELECT a.tenant AS Tenant, a.audit_id AS AuditId, a.looked_at_on AS LookedAtOn, a.records_read AS RecordsRead, a.kind AS Kind
        FROM audits a
        WHERE a.state = 'running'
            AND NOT EXISTS (SELECT 1 FROM audit_chunks c WHERE c.tenant = a.tenant AND c.audit_id = a.audit_id AND c.is_done = 0)
        """;

    private const string SelectSums = "SELECT sums FROM audit_chunks WHERE tenant = @Tenant AND audit_id = @AuditId ORDER BY chunk";

    private const string Complete = """
        UPDATE audits SET state = @state, finished_at = @now, summary = @summary, reason = @reason
        WHERE tenant = @tenant AND audit_id = @auditId AND state = 'running'
        """;

    /// <summary>Ends every audit that is ready for it. Two that do so at once say the same, and one of them is written.</summary>
    public async Task RunAsync(CancellationToken cancel)
    {
        var ready = await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(SelectReady, cancellationToken: cancel)), cancel);
        foreach (var audit in ready)
            await EndAsync(audit, cancel);
    }

    private async Task EndAsync(Row audit, CancellationToken cancel)
    {
        var (answered, summary) = audit.Kind == JobKinds.Preview ? await PreviewOfAsync(audit, cancel) : await AuditOfAsync(audit, cancel);

        // The count at arrival and the count of answers come from different places; were they ever to differ, a record would be lost.
        var isWhole = answered == audit.RecordsRead;
        var ended = new
        {
            tenant = audit.Tenant,
            auditId = audit.AuditId,
            state = isWhole ? "completed" : "failed",
            now = Database.TextOf(clock.GetUtcNow()),
            summary = Packed.Of(summary),
            reason = isWhole ? null : $"{audit.RecordsRead} records arrived, and {answered} were answered.",
        };
        await database.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(Complete, ended, transaction, cancellationToken: cancel)) == 1,
            cancel);
    }

    private async Task<(long Answered, byte[] Summary)> AuditOfAsync(Row audit, CancellationToken cancel)
    {
        var all = new SummaryParts();
        await AddAllAsync(audit, sums => all.Add(SummaryParts.Of(sums)), cancel);
        var summary = all.ToSummary(Database.DayOf(audit.LookedAtOn), audit.RecordsRead, engine.Catalogue.Header.Cautions);
        return (all.Judged + all.Rejected, JsonSerializer.SerializeToUtf8Bytes(summary, AuditJson.Wire.AuditSummary));
    }

    private async Task<(long Answered, byte[] Summary)> PreviewOfAsync(Row preview, CancellationToken cancel)
    {
        var all = new PreviewParts();
        await AddAllAsync(preview, sums => all.Add(PreviewParts.Of(sums)), cancel);
        return (all.Judged + all.Rejected, JsonSerializer.SerializeToUtf8Bytes(all.ToSummary(engine.Catalogue.Header.Cautions), PreviewJson.Wire.PreviewSummary));
    }

    private Task<bool> AddAllAsync(Row audit, Action<byte[]> add, CancellationToken cancel) => database.ReadAsync(
        async connection =>
        {
            await foreach (var part in connection.QueryUnbufferedAsync<byte[]>(SelectSums, new { audit.Tenant, audit.AuditId }).WithCancellation(cancel))
                add(Packed.Open(part));
            return true;
        },
        cancel);

    private sealed class Row
    {
        public required string Tenant { get; init; }

        public required string AuditId { get; init; }

        public required string LookedAtOn { get; init; }

        public required long RecordsRead { get; init; }

        public required string Kind { get; init; }
    }
}
