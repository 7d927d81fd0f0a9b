using System.Text;
using Dapper;
using Jobs.Queue;
using Jobs.Summary;
using Records.Many;
using Storage;

namespace Jobs.Previews;

/// <summary>
/// Accepts a preview: notes which visits are to be judged anew, some hundred to a chunk: of each the evaluation that counts. Those that
/// come later are no part of it.
/// </summary>
public sealed class PreviewIntake(Database database, TimeProvider clock)
{
    private const int ChunkSize = 200;
    private const int ChunksAtOnce = 10;

    private const string Insert = """
        INSERT INTO audits (tenant, audit_id, kind, candidate, state, created_at, heard_at, looked_at_on, records_read)
        VALUES (@tenant, @auditId, 'preview', @candidate, 'receiving', @now, @now, @today, 0)
        """;

    private const string SelectIds = """
        SELECT evaluation_id FROM visits
        WHERE tenant = @tenant AND evaluation_id > @after AND replaced_at IS NULL
            AND (@from IS NULL OR finished_at >= @from) AND (@before IS NULL OR finished_at < @before)
        ORDER BY evaluation_id LIMIT @most
        """;

    private const string Heard = "UPDATE audits SET heard_at = @now WHERE tenant = @tenant AND audit_id = @auditId AND state = 'receiving'";

    /// <summary>Without a chunk nobody would begin it.</summary>
    private const string Accept = """
        UPDATE audits SET state = CASE WHEN @read = 0 THEN 'running' ELSE 'queued' END, heard_at = @now, records_read = @read
        WHERE tenant = @tenant AND audit_id = @auditId AND state = 'receiving'
        """;

    private static readonly string[] Columns =
        ["tenant", "audit_id", "chunk", "records", "is_done", "attempts", "judged", "rejected", "payload"];

    /// <summary>Accepts it; gives how it stands then.</summary>
    public async Task<PreviewStatus> AcceptAsync(Tenant tenant, Candidate candidate, CancellationToken cancel)
    {
        var now = clock.GetUtcNow();
        var preview = new
        {
            tenant = tenant.Name,
            auditId = Guid.CreateVersion7(now).ToString(),
            candidate = candidate.ToBytes(),
            now = Database.TextOf(now),
            today = Database.TextOf(DateOnly.FromDateTime(now.UtcDateTime)),
        };
        await ExecuteAsync(Insert, preview, cancel);
        var isAccepted = false;
        try
        {
            var read = await NoteAsync(tenant, preview.auditId, candidate, cancel);
            isAccepted = await ExecuteAsync(Accept, new { preview.tenant, preview.auditId, now = Database.TextOf(clock.GetUtcNow()), read }, cancel);
            if (!isAccepted)
                throw new InvalidOperationException("The preview was dropped while it was being accepted.");

            var job = new AuditStatus
            {
                AuditId = preview.auditId,
                State = AuditState.Queued,
                CreatedAt = now,
                LookedAtOn = DateOnly.FromDateTime(now.UtcDateTime),
                Records = new RecordCounts { Read = read, Judged = 0, Rejected = 0 },
            };
            return PreviewStore.StatusOf(job, candidate);
        }
        finally
        {
            if (!isAccepted)
                await database.DropAuditAsync(preview.tenant, preview.auditId, CancellationToken.None);
        }
    }

    private async Task<long> NoteAsync(Tenant tenant, string auditId, Candidate candidate, CancellationToken cancel)
    {
        var (read, after) = (0L, "");
        while (true)
        {
            var asked = new
            {
                tenant = tenant.Name,
                after,
                from = candidate.From is { } from ? Database.TextOf(from) : null,
                before = candidate.To is { } to ? Database.TextOf(to.AddDays(1)) : null,
                most = ChunkSize * ChunksAtOnce,
            };
            var ids = (await database.ReadAsync(connection => connection.QueryAsync<string>(new CommandDefinition(SelectIds, asked, cancellationToken: cancel)), cancel)).AsList();
            if (ids.Count == 0)
                return read;

            var first = read + 1;
            var chunks = ids.Index().Select(id => new RecordLine(first + id.Index, Encoding.UTF8.GetBytes(id.Item))).Chunk(ChunkSize)
                .Select(lines => new object?[] { tenant.Name, auditId, lines[0].Number, lines.Length, 0, 0, 0, 0, ChunkPayload.Write(lines) }).ToList();
            await database.WriteAsync(
                async transaction =>
                {
                    await transaction.InsertAsync("audit_chunks", Columns, chunks, cancel);
                    var heard = new { tenant = tenant.Name, auditId, now = Database.TextOf(clock.GetUtcNow()) };
                    return await transaction.Connection!.ExecuteAsync(new CommandDefinition(Heard, heard, transaction, cancellationToken: cancel)) == 1;
                },
                cancel);
            (read, after) = (read + ids.Count, ids[^1]);
        }
    }

    private Task<bool> ExecuteAsync(string sql, object row, CancellationToken cancel) => database.WriteAsync(
        async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, row, transaction, cancellationToken: cancel)) == 1, cancel);
}
