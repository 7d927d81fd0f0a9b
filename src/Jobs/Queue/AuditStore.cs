using System.Text.Json;
using Dapper;
using Jobs.Summary;
using Records.Reading;
using Storage;

namespace Jobs.Queue;

/// <summary>Audits and how far they are.</summary>
public sealed class AuditStore(Database database, TimeProvider clock)
{
    private const string Select = """
        SELECT a.audit_id AS AuditId, a.state AS State, a.created_at AS CreatedAt, a.started_at AS StartedAt, a.finished_at AS FinishedAt,
            a.looked_at_on AS LookedAtOn, a.records_read AS RecordsRead, a.reason AS Reason, a.summary AS Summary,
            CAST(COALESCE((SELECT SUM(c.judged) FROM audit_chunks c WHERE c.tenant = a.tenant AND c.audit_id = a.audit_id), 0) AS BIGINT) AS Judged,
            CAST(COALESCE((SELECT SUM(c.rejected) FROM audit_chunks c WHERE c.tenant = a.tenant AND c.audit_id = a.audit_id), 0) AS BIGINT) AS Rejected
        FROM audits a
        WHERE a.tenant = @tenant AND a.kind = @kind AND a.state <> 'receiving'
        """;

    private const string CountOpen = "SELECT COUNT(*) FROM audits WHERE tenant = @tenant AND state IN ('receiving', 'queued', 'running')";

    private const string SelectOne = Select + " AND a.audit_id = @auditId";

    private const string SelectPage = Select + " AND (@before IS NULL OR a.audit_id < @before) ORDER BY a.audit_id DESC LIMIT @limit";

    private const string CountAll = "SELECT COUNT(*) FROM audits WHERE tenant = @tenant AND kind = @kind AND state <> 'receiving'";

    private const string CancelOne = """
        UPDATE audits SET state = 'cancelled', finished_at = @now WHERE tenant = @tenant AND audit_id = @auditId AND kind = @kind AND state IN ('queued', 'running')
        """;

    private const string SelectLine = """
        SELECT answer AS Answer, record AS Record FROM audit_lines WHERE tenant = @tenant AND audit_id = @auditId AND line = @line
        """;

    private const string SelectUnsafe = """
        SELECT answer AS Answer, record AS Record FROM audit_lines WHERE tenant = @tenant AND audit_id = @auditId AND outcome = 'unsafe' AND superseded_by IS NULL
        """;

    private const string SelectLines = """
        SELECT answer FROM audit_lines WHERE tenant = @tenant AND audit_id = @auditId ORDER BY line
        """;

    /// <summary>One audit; null when this tenant has none of this id.</summary>
    public async Task<AuditStatus?> FindAsync(Tenant tenant, string auditId, CancellationToken cancel, string kind = JobKinds.Audit)
    {
        var command = new CommandDefinition(SelectOne, new { tenant = tenant.Name, auditId, kind }, cancellationToken: cancel);
        return await database.ReadAsync(connection => connection.QuerySingleOrDefaultAsync<Row>(command), cancel) is { } row ? StatusOf(row, kind) : null;
    }

    /// <summary>How many of a tenant's audits have not ended.</summary>
    public Task<int> CountOpenAsync(Tenant tenant, CancellationToken cancel) => database.ReadAsync(
        connection => connection.ExecuteScalarAsync<int>(new CommandDefinition(CountOpen, new { tenant = tenant.Name }, cancellationToken: cancel)), cancel);

    /// <summary>Audits, newest first, without their summaries; those older than <paramref name="before"/> where it is given.</summary>
    public async Task<(IReadOnlyList<AuditStatus> Items, int Total)> ListAsync(Tenant tenant, string? before, int limit, CancellationToken cancel, string kind = JobKinds.Audit)
    {
        var asked = new { tenant = tenant.Name, before, limit, kind };
        var rows = await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(SelectPage, asked, cancellationToken: cancel)), cancel);
        var total = await database.ReadAsync(connection => connection.ExecuteScalarAsync<int>(new CommandDefinition(CountAll, asked, cancellationToken: cancel)), cancel);
        return ([.. rows.Select(row => StatusOf(row, kind) with { Summary = null })], total);
    }

    /// <summary>Cancels an audit that has not ended; false when there is no such audit.</summary>
    public Task<bool> CancelAsync(Tenant tenant, string auditId, CancellationToken cancel, string kind = JobKinds.Audit)
    {
        var asked = new { tenant = tenant.Name, auditId, kind, now = Database.TextOf(clock.GetUtcNow()) };
        return database.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(CancelOne, asked, transaction, cancellationToken: cancel)) == 1,
            cancel);
    }

    /// <summary>What was said of one record, with its bytes; null when this tenant's audit has no answer for that line.</summary>
    public async Task<(AuditLine Answer, ReadOnlyMemory<byte> Record)?> LineAsync(Tenant tenant, string auditId, long line, CancellationToken cancel)
    {
        var command = new CommandDefinition(SelectLine, new { tenant = tenant.Name, auditId, line }, cancellationToken: cancel);
        return await database.ReadAsync(connection => connection.QuerySingleOrDefaultAsync<LineRow>(command), cancel) is { } row
            ? (JsonSerializer.Deserialize(Packed.Open(row.Answer), AuditJson.Wire.AuditLine)!, Packed.Open(row.Record))
            : null;
    }

    /// <summary>Every record that shows a danger, the gravest first.</summary>
    public Task<IReadOnlyList<UnsafeRecord>> UnsafeAsync(Tenant tenant, string auditId, CancellationToken cancel) => database.ReadAsync(
        async connection =>
        {
            var all = new List<UnsafeRecord>();
            await foreach (var row in connection.QueryUnbufferedAsync<LineRow>(SelectUnsafe, new { tenant = tenant.Name, auditId }).WithCancellation(cancel))
            {
                var answer = JsonSerializer.Deserialize(Packed.Open(row.Answer), AuditJson.Wire.AuditLine)!;
                if (UnsafeRecord.Of(answer, RecordReader.Read(Packed.Open(row.Record)).Record) is { } one)
                    all.Add(one);
            }

            return UnsafeRecord.Sorted(all);
        },
        cancel);

    /// <summary>What was said of each record, in order.</summary>
    public async Task<IReadOnlyList<AuditLine>> LinesAsync(Tenant tenant, string auditId, CancellationToken cancel)
    {
        var command = new CommandDefinition(SelectLines, new { tenant = tenant.Name, auditId }, cancellationToken: cancel);
        var answers = await database.ReadAsync(connection => connection.QueryAsync<byte[]>(command), cancel);
        return [.. answers.Select(answer => JsonSerializer.Deserialize(Packed.Open(answer), AuditJson.Wire.AuditLine)!)];
    }

    private AuditStatus StatusOf(Row row, string kind)
    {
        var state = Enum.Parse<AuditState>(row.State, ignoreCase: true);
        var startedAt = MomentOf(row.StartedAt);
        var finishedAt = MomentOf(row.FinishedAt);
        var seconds = startedAt is { } start ? (decimal)((finishedAt ?? clock.GetUtcNow()) - start).TotalSeconds : 0;
        var done = row.Judged + row.Rejected;
        var rate = seconds > 0 && done > 0 ? decimal.Round(done / seconds, 1) : (decimal?)null;
        return new AuditStatus
        {
            AuditId = row.AuditId,
            State = state,
            CreatedAt = Database.MomentOf(row.CreatedAt),
            StartedAt = startedAt,
            FinishedAt = finishedAt,
            LookedAtOn = Database.DayOf(row.LookedAtOn),
            Records = new RecordCounts { Read = row.RecordsRead, Judged = row.Judged, Rejected = row.Rejected },
            RatePerSecond = rate,
            ExpectedEnd = state == AuditState.Running && rate > 0 ? clock.GetUtcNow().AddSeconds((double)((row.RecordsRead - done) / rate.Value)) : null,
            Reason = row.Reason,
            Summary = kind == JobKinds.Audit && row.Summary is { } summary ? JsonSerializer.Deserialize(Packed.Open(summary), AuditJson.Wire.AuditSummary) : null,
        };
    }

    private static DateTimeOffset? MomentOf(string? text) => text is null ? null : Database.MomentOf(text);

    private sealed class LineRow
    {
        public required byte[] Answer { get; init; }

        public required byte[] Record { get; init; }
    }

    private sealed class Row
    {
        public required string AuditId { get; init; }

        public required string State { get; init; }

        public required string CreatedAt { get; init; }

        public string? StartedAt { get; init; }

        public string? FinishedAt { get; init; }

        public required string LookedAtOn { get; init; }

        public required long RecordsRead { get; init; }

        public required long Judged { get; init; }

        public required long Rejected { get; init; }

        public string? Reason { get; init; }

        public byte[]? Summary { get; init; }
    }
}
