using System.Data.Common;
using Dapper;
using Records.Many;
using Storage;

namespace Jobs.Queue;

/// <summary>
/// The chunks that wait to be judged. Whoever takes one holds it for a time; if nothing comes of it, the next one may. Results and the
/// mark that a chunk is done are written together, and only by who holds it: a record is judged into the results once.
/// </summary>
public sealed class WaitingChunks(Database database, TimeProvider clock, TimeSpan lease)
{
    // First the oldest audit that has one to take, then its first: all that wait need not be looked at, however long the audit is.
    internal const string Take = """
        UPDATE audit_chunks SET claim = @claim, lease_until = @until, attempts = attempts + 1
        WHERE (tenant, audit_id, chunk) = (
            SELECT c.tenant, c.audit_id, c.chunk
            FROM audit_chunks c
            WHERE (c.tenant, c.audit_id) = (
                    SELECT a.tenant, a.audit_id FROM audits a
                    WHERE a.state IN ('queued', 'running') AND EXISTS (
                        SELECT 1 FROM audit_chunks o
                        WHERE o.tenant = a.tenant AND o.audit_id = a.audit_id AND o.is_done = 0 AND (o.lease_until IS NULL OR o.lease_until < @now))
                    ORDER BY a.created_at LIMIT 1)
                AND c.is_done = 0 AND (c.lease_until IS NULL OR c.lease_until < @now)
            ORDER BY c.chunk LIMIT 1 {0})
        RETURNING tenant AS Tenant, audit_id AS AuditId, chunk AS Chunk, attempts AS Attempts, payload AS Payload
        """;

    private const string Start = """
        UPDATE audits SET state = 'running', started_at = @now WHERE tenant = @tenant AND audit_id = @auditId AND state = 'queued'
        """;

    private const string SelectJob = "SELECT created_at AS CreatedAt, kind AS Kind, key_id AS KeyId FROM audits WHERE tenant = @tenant AND audit_id = @auditId";

    private const string Release = """
        UPDATE audit_chunks SET claim = NULL, lease_until = NULL, attempts = attempts - 1
        WHERE tenant = @tenant AND audit_id = @auditId AND chunk = @number AND claim = @claim
        """;

    private const string Remove = "DELETE FROM audit_chunks WHERE tenant = @tenant AND audit_id = @auditId AND chunk = @number AND claim = @claim";

    private static readonly string[] Columns =
        ["tenant", "audit_id", "chunk", "records", "is_done", "attempts", "judged", "rejected", "payload"];

    /// <summary>Takes the next chunk; null when there is none to take.</summary>
    public async Task<Chunk?> TakeAsync(CancellationToken cancel)
    {
        var now = clock.GetUtcNow();
        var claim = Guid.CreateVersion7(now).ToString();
        var row = default(Row);
        var job = default(Job);
        await database.WriteAsync(
            async transaction =>
            {
                var asked = new { claim, now = Database.TextOf(now), until = Database.TextOf(now + lease) };
                var sql = Take.Replace("{0}", database.LockingC, StringComparison.Ordinal);
                row = await transaction.Connection!.QuerySingleOrDefaultAsync<Row>(new CommandDefinition(sql, asked, transaction, cancellationToken: cancel));
                if (row is null)
                    return false;

                var audit = new { tenant = row.Tenant, auditId = row.AuditId, asked.now };
                await transaction.Connection!.ExecuteAsync(new CommandDefinition(Start, audit, transaction, cancellationToken: cancel));
                job = await transaction.Connection!.QuerySingleAsync<Job>(new CommandDefinition(SelectJob, audit, transaction, cancellationToken: cancel));
                return true;
            },
            cancel);
        return row is null ? null : new Chunk(new Tenant(row.Tenant), row.AuditId, row.Chunk, claim, row.Attempts, Database.MomentOf(job!.CreatedAt), ChunkPayload.Read(row.Payload)) { Kind = job.Kind, KeyId = job.KeyId };
    }

    /// <summary>Gives a chunk back untouched, so that nobody has to wait for the end of its time.</summary>
    public Task<bool> ReleaseAsync(Chunk chunk, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(chunk);
        return database.WriteAsync(transaction => ExecuteAsync(transaction, Release, chunk, cancel), cancel);
    }

    /// <summary>Cuts a chunk into single records, so that one that ends the process over and over is told from the others.</summary>
    public Task<bool> SplitAsync(Chunk chunk, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(chunk);
        return database.WriteAsync(
            async transaction =>
            {
                if (!await ExecuteAsync(transaction, Remove, chunk, cancel))
                    return false;
                await transaction.InsertAsync("audit_chunks", Columns,
                    chunk.Lines.Select(line => new object?[] { chunk.Tenant.Name, chunk.AuditId, line.Number, 1, 0, 0, 0, 0, ChunkPayload.Write([line]) }), cancel);
                return true;
            },
            cancel);
    }

    private static async Task<bool> ExecuteAsync(DbTransaction transaction, string sql, Chunk chunk, CancellationToken cancel)
    {
        var key = new { tenant = chunk.Tenant.Name, auditId = chunk.AuditId, number = chunk.Number, claim = chunk.Claim };
        return await transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, key, transaction, cancellationToken: cancel)) == 1;
    }

    private sealed class Row
    {
        public required string Tenant { get; init; }

        public required string AuditId { get; init; }

        public required long Chunk { get; init; }

        public required int Attempts { get; init; }

        public required byte[] Payload { get; init; }
    }

    private sealed class Job
    {
        public required string CreatedAt { get; init; }

        public required string Kind { get; init; }

        public string? KeyId { get; init; }
    }
}

/// <summary>A chunk that somebody has taken.</summary>
/// <param name="Tenant">Whose audit.</param>
/// <param name="AuditId">Which audit.</param>
/// <param name="Number">Number of its first record.</param>
/// <param name="Claim">By which the holder is known.</param>
/// <param name="Attempts">How often it was taken, this time included.</param>
/// <param name="AuditStartedAt">When the audit was accepted.</param>
/// <param name="Lines">The records.</param>
public sealed record Chunk(
    Tenant Tenant, string AuditId, long Number, string Claim, int Attempts, DateTimeOffset AuditStartedAt, IReadOnlyList<RecordLine> Lines)
{
    /// <summary>How often a chunk is taken up before it is suspected of ending whoever judges it.</summary>
    public const int MostAttempts = 5;

    /// <summary>What it is a chunk of: one of <see cref="JobKinds"/>.</summary>
    public string Kind { get; init; } = JobKinds.Audit;

    /// <summary>Id of the key with which it was posted; null: none was asked for.</summary>
    public string? KeyId { get; init; }
}
