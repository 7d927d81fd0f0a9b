using System.Data.Common;
using Dapper;
using Records.Many;
using Storage;

namespace Jobs.Queue;

/// <summary>Takes the records of an audit in as they arrive, some dozen at a time, so that its length does not matter.</summary>
public sealed class AuditIntake(Database database, TimeProvider clock)
{
    // All that is said of a chunk is held until it is written: of 200 records a worker held four times as much, and was little quicker.
    private const int MostRecords = 50;
    private const int MostBytes = 4 * RecordLine.MaxBytes;

    /// <summary>An intake of which nothing was heard for so long has ended without saying so.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    private const string Insert = """
        INSERT INTO audits (tenant, audit_id, state, created_at, heard_at, looked_at_on, idempotency_key, records_read, key_id)
        VALUES (@tenant, @auditId, 'receiving', @now, @now, @lookedAtOn, @key, 0, @keyId)
        """;

    private const string Accept = """
        UPDATE audits SET state = 'queued', heard_at = @now, body_hash = @bodyHash, records_read = @read
        WHERE tenant = @tenant AND audit_id = @auditId AND state = 'receiving'
        """;

    private const string Heard = "UPDATE audits SET heard_at = @now WHERE tenant = @tenant AND audit_id = @auditId AND state = 'receiving'";

    private const string SelectByKey = "SELECT audit_id AS AuditId, state AS State, body_hash AS BodyHash FROM audits WHERE tenant = @tenant AND idempotency_key = @key";

    private const string SelectSilent = "SELECT tenant AS Tenant, audit_id AS AuditId FROM audits WHERE state = 'receiving' AND heard_at < @before";

    private readonly Corrections _corrections = new(database);

    private static readonly string[] Columns =
        ["tenant", "audit_id", "chunk", "records", "is_done", "attempts", "judged", "rejected", "payload"];

    /// <summary>Takes an audit in.</summary>
    /// <param name="tenant">Whose it is.</param>
    /// <param name="key">The caller's key by which a repeated request is known; null: none.</param>
    /// <param name="lines">The records.</param>
    /// <param name="bodyHash">Hash of all that was sent; asked for once the records have been read to the end.</param>
    /// <param name="cancel">Gives up; nothing stays.</param>
    /// <param name="keyId">Id of the key with which it was posted; null: none was asked for.</param>
    /// <exception cref="ManyRecordsException">From some place on nothing can be read; nothing stays.</exception>
    public async Task<Intake> ReceiveAsync(
        Tenant tenant, string? key, IAsyncEnumerable<RecordLine> lines, Func<string> bodyHash, CancellationToken cancel, string? keyId = null)
    {
        await DropSilentAsync(cancel);
        if (key is not null && await FindAsync(tenant, key, cancel) is { } earlier)
            return await CompareAsync(earlier, lines, bodyHash, cancel);

        var now = clock.GetUtcNow();
        var audit = new
        {
            tenant = tenant.Name,
            auditId = Guid.CreateVersion7(now).ToString(),
            now = Database.TextOf(now),
            lookedAtOn = Database.TextOf(DateOnly.FromDateTime(now.UtcDateTime)),
            key,
            keyId,
        };
        try
        {
            await ExecuteAsync(Insert, audit, cancel);
        }
        catch (DbException fault) when (Database.IsDuplicate(fault))
        {
            return new Intake(IntakeOutcome.InFlight, null);
        }

        var isAccepted = false;
        try
        {
            var read = await StoreAsync(tenant, audit.auditId, lines, cancel);
            if (read == 0)
                return new Intake(IntakeOutcome.Empty, null);
            var accepted = new { audit.tenant, audit.auditId, now = Database.TextOf(clock.GetUtcNow()), bodyHash = bodyHash(), read };
            isAccepted = await ExecuteAsync(Accept, accepted, cancel);
            return isAccepted ? new Intake(IntakeOutcome.Accepted, audit.auditId) : throw new InvalidOperationException("The audit was dropped while it arrived.");
        }
        finally
        {
            if (!isAccepted)
                await database.DropAuditAsync(audit.tenant, audit.auditId, CancellationToken.None);
        }
    }

    private async Task<long> StoreAsync(Tenant tenant, string auditId, IAsyncEnumerable<RecordLine> lines, CancellationToken cancel)
    {
        var read = 0L;
        var bytes = 0;
        var chunk = new List<RecordLine>(MostRecords);
        await foreach (var line in lines.WithCancellation(cancel))
        {
            chunk.Add(line);
            read++;
            bytes += line.Utf8.Length;
            if (chunk.Count == MostRecords || bytes > MostBytes)
            {
                await StoreAsync(tenant, auditId, chunk, cancel);
                chunk.Clear();
                bytes = 0;
            }
        }

        if (chunk.Count > 0)
            await StoreAsync(tenant, auditId, chunk, cancel);
        return read;
    }

    private async Task StoreAsync(Tenant tenant, string auditId, List<RecordLine> chunk, CancellationToken cancel)
    {
        var payload = ChunkPayload.Write(chunk);
        var replaced = new List<Replacement>();
        foreach (var line in chunk)
            replaced.AddRange(await _corrections.OfAsync(tenant, line, cancel));
        await database.WriteAsync(
            async transaction =>
            {
                await Corrections.SaveAsync(transaction, tenant, auditId, replaced, cancel);
                await transaction.InsertAsync("audit_chunks", Columns, [[tenant.Name, auditId, chunk[0].Number, chunk.Count, 0, 0, 0, 0, payload]], cancel);
                var now = Database.TextOf(clock.GetUtcNow());
                return await transaction.Connection!.ExecuteAsync(new CommandDefinition(Heard, new { tenant = tenant.Name, auditId, now }, transaction, cancellationToken: cancel)) == 1;
            },
            cancel);
    }

    /// <summary>The same key again: the same body is the same audit, and another body is a mistake.</summary>
    private static async Task<Intake> CompareAsync(Earlier earlier, IAsyncEnumerable<RecordLine> lines, Func<string> bodyHash, CancellationToken cancel)
    {
        if (earlier.State == "receiving")
            return new Intake(IntakeOutcome.InFlight, null);

        await foreach (var _ in lines.WithCancellation(cancel))
        {
            // Read for its hash alone.
        }

        return earlier.BodyHash == bodyHash() ? new Intake(IntakeOutcome.Repeated, earlier.AuditId) : new Intake(IntakeOutcome.OtherBody, null);
    }

    private Task<Earlier?> FindAsync(Tenant tenant, string key, CancellationToken cancel) => database.ReadAsync(
        connection => connection.QuerySingleOrDefaultAsync<Earlier>(new CommandDefinition(SelectByKey, new { tenant = tenant.Name, key }, cancellationToken: cancel)), cancel);

    private async Task DropSilentAsync(CancellationToken cancel)
    {
        var before = Database.TextOf(clock.GetUtcNow() - Patience);
        var silent = await database.ReadAsync(
            connection => connection.QueryAsync<Silent>(new CommandDefinition(SelectSilent, new { before }, cancellationToken: cancel)), cancel);
        foreach (var audit in silent)
            await database.DropAuditAsync(audit.Tenant, audit.AuditId, cancel);
    }

    private Task<bool> ExecuteAsync(string sql, object row, CancellationToken cancel) => database.WriteAsync(
        async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, row, transaction, cancellationToken: cancel)) == 1, cancel);

    private sealed class Earlier
    {
        public required string AuditId { get; init; }

        public required string State { get; init; }

        public string? BodyHash { get; init; }
    }

    private sealed class Silent
    {
        public required string Tenant { get; init; }

        public required string AuditId { get; init; }
    }
}

/// <summary>What became of a posted audit.</summary>
/// <param name="Outcome">What became of it.</param>
/// <param name="AuditId">Its id, where there is an audit.</param>
public sealed record Intake(IntakeOutcome Outcome, string? AuditId);

/// <summary>What can become of a posted audit.</summary>
public enum IntakeOutcome
{
    /// <summary>It is stored and will be judged.</summary>
    Accepted,

    /// <summary>It was posted before under this key.</summary>
    Repeated,

    /// <summary>Something else was posted before under this key.</summary>
    OtherBody,

    /// <summary>A request under this key is still arriving.</summary>
    InFlight,

    /// <summary>There is no record in it.</summary>
    Empty,
}
