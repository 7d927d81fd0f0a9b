using System.Globalization;
using System.Text;
using Dapper;
using Hangfire;
using Hangfire.PostgreSql;
using Jobs.Queue;
using Jobs.Workers;
using QueueComparison;
using Records.Many;
using Storage;

// What ../queue puts together. CONNECTION is the first argument everywhere; the store is made when it is not there.
const int Workers = 2;
using var database = Database.OpenPostgreSql(args[1], StoreOpening.OrMake);
switch (args)
{
    case ["fill", _, var records]:
        // The example record with ids of its own, as the other long tests post it.
        var engine = ChunkJob.Rules();
        var example = Encoding.UTF8.GetString(engine.Catalogue.ExampleRecord).ReplaceLineEndings("");
        var lines = Enumerable.Range(1, int.Parse(records, CultureInfo.InvariantCulture)).Select(number => new RecordLine(number, Encoding.UTF8.GetBytes(
            example.Replace("\"HB-0001\"", $"\"M-{number}\"").Replace("\"QB-25-004711\"", $"\"S-{number}\"").Replace("\"naturalGas\"", number % 97 == 0 ? "\"coal\"" : "\"naturalGas\""))));
        var received = await new AuditIntake(database, TimeProvider.System).ReceiveAsync(Tenant.Local, null, lines.ToAsyncEnumerable(), () => "", default);
        Console.WriteLine(received.AuditId);
        break;

    case ["enqueue", _, var auditId]:
        UseHangfire();
        var chunks = await database.ReadAsync(connection => connection.QueryAsync<long>("SELECT chunk FROM audit_chunks WHERE audit_id = @auditId ORDER BY chunk", new { auditId }), default);
        foreach (var chunk in chunks)
            BackgroundJob.Enqueue<ChunkJob>(job => job.RunAsync(auditId, chunk));
        break;

    case ["work", _, "hangfire"]:
        UseHangfire();
        JobActivator.Current = new OneJob(new ChunkJob(database, ChunkJob.Rules()));
        using (new BackgroundJobServer(new BackgroundJobServerOptions { WorkerCount = Workers, SchedulePollingInterval = TimeSpan.FromSeconds(1) }))
            await Task.Delay(Timeout.Infinite);
        break;

    case ["work", _, "own"]:
        var own = new ChunkJob(database, ChunkJob.Rules());
        var queue = new WaitingChunks(database, TimeProvider.System, TimeSpan.FromSeconds(3));
        await Task.WhenAll(Enumerable.Range(0, Workers).Select(_ => Task.Run(async () =>
        {
            while (true)
            {
                if (await queue.TakeAsync(default) is { } chunk)
                    await own.JudgeAsync(chunk);
                else
                    await Task.Delay(200);
                await new AuditFinish(database, own.Engine, TimeProvider.System).RunAsync(default);
            }
        })));
        break;

    case ["await", _, var auditId, var seconds]:
        for (var patience = 10 * int.Parse(seconds, CultureInfo.InvariantCulture); ; patience--)
        {
            var audit = await database.ReadAsync(connection => connection.QuerySingleAsync<(string State, string Started, string Finished, long Read, long Done)>(
                """
                SELECT state, started_at, finished_at, records_read,
                    (SELECT COALESCE(SUM(judged + rejected), 0) FROM audit_chunks c WHERE c.audit_id = audits.audit_id) FROM audits WHERE audit_id = @auditId
                """,
                new { auditId }), default);
            if (audit.Finished is not null || patience == 0)
            {
                var took = audit.Finished is null ? double.NaN : (Database.MomentOf(audit.Finished) - Database.MomentOf(audit.Started)).TotalSeconds;
                if (audit.Finished is null && patience == 0)
                    await ExplainAsync();
                Console.WriteLine(FormattableString.Invariant($"{audit.State}, {audit.Done} of {audit.Read} answered, {took:0.0} s, {audit.Read / took:0} a second"));
                return audit.Finished is null ? 1 : 0;
            }

            await Task.Delay(100);
        }

    default:
        return 2;
}

return 0;

// What Hangfire itself says of jobs that are not done.
async Task ExplainAsync()
{
    if (await database.ReadAsync(connection => connection.ExecuteScalarAsync<string>("SELECT to_regclass('hangfire.job')::text"), default) is null)
        return;
    foreach (var line in await database.ReadAsync(connection => connection.QueryAsync<string>(
        """
        SELECT 'job ' || j.id || ' ' || COALESCE(j.statename, '(none)') || ', in the queue: ' || COUNT(q.id) || ', fetched at ' || COALESCE(MAX(q.fetchedat)::text, '-')
            || ' of ' || now() || ', retries ' || COALESCE(MAX(p.value), '0')
        FROM hangfire.job j LEFT JOIN hangfire.jobqueue q ON q.jobid = j.id LEFT JOIN hangfire.jobparameter p ON p.jobid = j.id AND p.name = 'RetryCount'
        WHERE j.statename IS DISTINCT FROM 'Succeeded' GROUP BY j.id, j.statename
        """), default))
        Console.WriteLine(line);
}

// Tuned for it: by default it polls every 15 seconds, and gives what a killed process held to another after half an hour. A lock that a
// killed process held on a job's state lasts 10 minutes by default; LOCK_SECONDS shortens that.
void UseHangfire() => GlobalConfiguration.Configuration.UsePostgreSqlStorage(
    options => options.UseNpgsqlConnection(args[1]),
    new PostgreSqlStorageOptions
    {
        QueuePollInterval = TimeSpan.FromMilliseconds(100),
        UseSlidingInvisibilityTimeout = true,
        InvisibilityTimeout = TimeSpan.FromSeconds(3),
        DistributedLockTimeout = TimeSpan.FromSeconds(double.Parse(Environment.GetEnvironmentVariable("LOCK_SECONDS") ?? "600", CultureInfo.InvariantCulture)),
    });
