using Checking;
using Dapper;
using Hangfire;
using Jobs.Queue;
using Jobs.Summary;
using Jobs.Workers;
using Kernel.Catalogues;
using Rules;
using Storage;
using Visits;
using Visits.Judging;

namespace QueueComparison;

/// <summary>
/// One chunk as a job that somebody else's queue hands out: the queue decides who works on it and when again, and this takes just that
/// chunk, judges it and writes what came out. All but the handing out is the product's own code.
/// </summary>
public sealed class ChunkJob(Database database, ComplianceEngine engine)
{
    private const string TakeThis = """
        UPDATE audit_chunks SET claim = @claim, attempts = attempts + 1
        WHERE tenant = 'local' AND audit_id = @auditId AND chunk = @number AND is_done = 0
        RETURNING attempts AS Attempts, payload AS Payload
        """;

    private const string Start = "UPDATE audits SET state = 'running', started_at = @now WHERE tenant = 'local' AND audit_id = @auditId AND state = 'queued'";

    private const string SelectCreated = "SELECT created_at FROM audits WHERE tenant = 'local' AND audit_id = @auditId";

    /// <summary>With EMPTY=1 nothing is judged: what is left is the cost of the queue.</summary>
    public static bool IsEmpty { get; } = Environment.GetEnvironmentVariable("EMPTY") == "1";

    public static ComplianceEngine Rules() => ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));

    public ComplianceEngine Engine => engine;

    /// <summary>Called by the queue; an exception makes it try again.</summary>
    public async Task RunAsync(string auditId, long number)
    {
        var moment = TimeProvider.System.GetUtcNow();
        var asked = new { auditId, number, claim = Guid.CreateVersion7(moment).ToString(), now = Database.TextOf(moment) };
        var row = default(Taken);
        var created = "";
        await database.WriteAsync(
            async transaction =>
            {
                row = await transaction.Connection!.QuerySingleOrDefaultAsync<Taken>(TakeThis, asked, transaction);
                await transaction.Connection!.ExecuteAsync(Start, asked, transaction);
                created = await transaction.Connection!.ExecuteScalarAsync<string>(SelectCreated, asked, transaction);
                return true;
            },
            default);

        // Handed out again after all was written: nothing is left to do.
        if (row is not null)
            await JudgeAsync(new Chunk(Tenant.Local, auditId, number, asked.claim, row.Attempts, Database.MomentOf(created!), ChunkPayload.Read(row.Payload)));
        await new AuditFinish(database, engine, TimeProvider.System).RunAsync(default);
    }

    /// <summary>As the product's own worker does.</summary>
    public async Task JudgeAsync(Chunk chunk)
    {
        var judge = new LineJudge(engine, new ProfileStore(database), new EvaluationStore(database, engine.Law), new HistoryStore(database, engine.Law), chunk.Tenant, chunk.AuditStartedAt);
        var judged = IsEmpty ? [] : await judge.JudgeAsync(chunk.Lines, default);
        var sums = new SummaryBuilder(judge.LookedAtOn);
        foreach (var line in judged)
            sums.Add(line);
        await new ResultStore(database, new AuditVisits(engine, TimeProvider.System)).CompleteAsync(chunk, judged, sums.Parts, default);
    }

    private sealed class Taken
    {
        public required int Attempts { get; init; }

        public required byte[] Payload { get; init; }
    }
}

/// <summary>Gives every job the one that is there.</summary>
internal sealed class OneJob(ChunkJob job) : JobActivator
{
    public override object ActivateJob(Type jobType) => job;
}
