using System.Runtime.CompilerServices;
using System.Text.Json;
using Dapper;
using Jobs.Queue;
using Storage;

namespace Jobs.Previews;

/// <summary>Previews, how far they are, and what would change.</summary>
public sealed class PreviewStore(Database database, AuditStore audits, TimeProvider clock)
{
    private const int PageOfAll = 500;

    private const string SelectCandidate = "SELECT candidate FROM audits WHERE tenant = @tenant AND audit_id = @previewId AND kind = 'preview'";

    private const string SelectSummary = "SELECT summary FROM audits WHERE tenant = @tenant AND audit_id = @previewId AND kind = 'preview'";

    private const string Fail = """
        UPDATE audits SET state = 'failed', finished_at = @now, reason = @why WHERE tenant = @tenant AND audit_id = @previewId AND state IN ('queued', 'running')
        """;

    private const string Matching = """
        tenant = @tenant AND audit_id = @previewId AND (@Change IS NULL OR change = @Change) AND (@RuleId IS NULL OR rule_id = @RuleId)
            AND (@Outcome IS NULL OR outcome = @Outcome OR (outcome = '' AND outcome_before = @Outcome))
            AND (@Engineer IS NULL OR engineer = @Engineer) AND (@Month IS NULL OR SUBSTR(finished_on, 1, 7) = @Month)
        """;

    private const string SelectRows = $"""
        SELECT line AS Line, ordinal AS Ordinal, change AS Change, evaluation_id AS Evaluation, record_id AS RecordId, finished_on AS StoredDay, maker AS Maker,
            model AS Model, serial_number AS SerialNumber, engineer AS Engineer, rule_id AS RuleId, topic AS Topic, subject AS Subject, outcome AS Outcome,
            outcome_before AS OutcomeBefore, message AS Message, message_before AS MessageBefore
        FROM preview_changes WHERE {Matching} AND (line, ordinal) > (@line, @ordinal) ORDER BY line, ordinal LIMIT @limit
        """;

    /// <summary>One preview; null when this tenant has none of this id.</summary>
    public async Task<PreviewStatus?> FindAsync(Tenant tenant, string previewId, CancellationToken cancel)
    {
        if (await audits.FindAsync(tenant, previewId, cancel, JobKinds.Preview) is not { } job)
            return null;

        var summary = await ReadAsync(SelectSummary, tenant, previewId, cancel);
        return StatusOf(job, await CandidateAsync(tenant, previewId, cancel)) with
        {
            Summary = summary is null ? null : JsonSerializer.Deserialize(Packed.Open(summary), PreviewJson.Wire.PreviewSummary),
        };
    }

    /// <summary>Previews, newest first, without their summaries; those older than <paramref name="before"/> where it is given.</summary>
    public async Task<(IReadOnlyList<PreviewStatus> Items, int Total)> ListAsync(Tenant tenant, string? before, int limit, CancellationToken cancel)
    {
        var (jobs, total) = await audits.ListAsync(tenant, before, limit, cancel, JobKinds.Preview);
        var items = new List<PreviewStatus>(jobs.Count);
        foreach (var job in jobs)
            items.Add(StatusOf(job, await CandidateAsync(tenant, job.AuditId, cancel)));
        return (items, total);
    }

    /// <summary>Cancels a preview that has not ended; false when there is no such preview.</summary>
    public Task<bool> CancelAsync(Tenant tenant, string previewId, CancellationToken cancel) => audits.CancelAsync(tenant, previewId, cancel, JobKinds.Preview);

    /// <summary>The rows behind a place, at most <paramref name="limit"/> of them.</summary>
    public async Task<IReadOnlyList<ChangeRow>> PageAsync(
        Tenant tenant, string previewId, ChangeQuery query, (long Line, int Ordinal) after, int limit, CancellationToken cancel)
    {
        var asked = Asked(tenant, previewId, query);
        asked.Add("line", after.Line);
        asked.Add("ordinal", after.Ordinal);
        asked.Add("limit", limit);
        return (await database.ReadAsync(connection => connection.QueryAsync<ChangeRow>(new CommandDefinition(SelectRows, asked, cancellationToken: cancel)), cancel)).AsList();
    }

    /// <summary>How many rows there are.</summary>
    public Task<int> CountAsync(Tenant tenant, string previewId, ChangeQuery query, CancellationToken cancel) => database.ReadAsync(
        connection => connection.ExecuteScalarAsync<int>(new CommandDefinition($"SELECT COUNT(*) FROM preview_changes WHERE {Matching}", Asked(tenant, previewId, query), cancellationToken: cancel)), cancel);

    /// <summary>Every row, a page at a time.</summary>
    public async IAsyncEnumerable<ChangeRow> AllAsync(Tenant tenant, string previewId, ChangeQuery query, [EnumeratorCancellation] CancellationToken cancel)
    {
        var after = (Line: 0L, Ordinal: 0);
        while (true)
        {
            var page = await PageAsync(tenant, previewId, query, after, PageOfAll, cancel);
            foreach (var row in page)
                yield return row;
            if (page.Count < PageOfAll)
                yield break;
            after = (page[^1].Line, page[^1].Ordinal);
        }
    }

    /// <summary>What a preview puts in place of what is in force.</summary>
    internal async Task<Candidate> CandidateAsync(Tenant tenant, string previewId, CancellationToken cancel) =>
        Candidate.Of((await ReadAsync(SelectCandidate, tenant, previewId, cancel))!);

    /// <summary>Ends a preview that cannot be completed.</summary>
    internal Task<bool> FailAsync(Tenant tenant, string previewId, string why, CancellationToken cancel)
    {
        var ended = new { tenant = tenant.Name, previewId, why, now = Database.TextOf(clock.GetUtcNow()) };
        return database.WriteAsync(async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(Fail, ended, transaction, cancellationToken: cancel)) == 1, cancel);
    }

    private Task<byte[]?> ReadAsync(string sql, Tenant tenant, string previewId, CancellationToken cancel) => database.ReadAsync(
        connection => connection.ExecuteScalarAsync<byte[]>(new CommandDefinition(sql, new { tenant = tenant.Name, previewId }, cancellationToken: cancel)), cancel);

    private static DynamicParameters Asked(Tenant tenant, string previewId, ChangeQuery query)
    {
        var asked = new DynamicParameters(query);
        asked.Add("tenant", tenant.Name);
        asked.Add("previewId", previewId);
        return asked;
    }

    internal static PreviewStatus StatusOf(AuditStatus job, Candidate candidate) => new()
    {
        PreviewId = job.AuditId,
        State = job.State,
        CreatedAt = job.CreatedAt,
        StartedAt = job.StartedAt,
        FinishedAt = job.FinishedAt,
        AsOf = candidate.AsOf,
        From = candidate.From,
        To = candidate.To,
        Overrides = candidate.Overrides?.GetArrayLength(),
        Evaluations = job.Records,
        RatePerSecond = job.RatePerSecond,
        ExpectedEnd = job.ExpectedEnd,
        Reason = job.Reason,
    };
}
