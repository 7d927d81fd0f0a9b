using System.Net;

namespace Api.Tests;

/// <summary>Services and databases that end in the middle of an audit. tests/long/audit-kill does the same fifty times on twenty thousand records.</summary>
public sealed class AuditKillTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const int Records = 2000;

    private byte[] Month => AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, Records));

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Killed_over_and_over_an_audit_says_what_an_undisturbed_one_says(string kind)
    {
        var folder = Directory.CreateTempSubdirectory("kill-");
        var arguments = Arguments(kind == "sqlite" ? $"--Store:Path={Path.Combine(folder.FullName, "c.db")}" : $"--Store:ConnectionString={PrivatePostgreSql.NewDatabase()}");

        // One instance at a time on SQLite, three on PostgreSQL, of which every kill takes another.
        var instances = new RunningService[kind == "sqlite" ? 1 : 3];
        for (var index = 0; index < instances.Length; index++)
            instances[index] = new RunningService(arguments);
        using var first = await instances[0].Listening();
        var undisturbed = (await first.PostAudit(Month, later: true)).Headers.Location!;
        await first.Completed(undisturbed);
        var audit = (await first.PostAudit(Month, later: true)).Headers.Location!;

        var atFirstKill = (await first.GetJson(audit.ToString()))["records"]!["judged"].Number();
        for (var kills = 0; kills < 4; kills++)
        {
            var index = kills % instances.Length;
            instances[index].Kill();
            instances[index].Dispose();
            instances[index] = new RunningService(arguments);
            using var client = await instances[index].Listening();
            await Task.Delay(200 * kills);
        }

        instances[0].Kill();
        instances[0].Dispose();
        instances[0] = new RunningService(arguments);
        using var last = await instances[0].Listening();
        var status = await last.Completed(audit);

        Assert.Equal("completed", status["state"].Text());
        Assert.True(atFirstKill < status["records"]!["judged"].Number(), "It was done before it was killed: this proves nothing.");
        Assert.Equal(await last.Said(undisturbed), await last.Said(audit));
        Array.ForEach(instances, instance => instance.Dispose());
        folder.Delete(recursive: true);
    }

    [Theory]
    [PostgreSql]
    public async Task Without_its_database_the_service_says_so_and_goes_on_when_it_is_back(string kind)
    {
        Assert.Equal("postgresql", kind);
        var server = new PostgreSqlServer();
        using var running = new RunningService(Arguments($"--Store:ConnectionString={server.NewDatabase()}"));
        using var client = await running.Listening();
        var undisturbed = (await client.PostAudit(Month, later: true)).Headers.Location!;
        await client.Completed(undisturbed);
        var audit = (await client.PostAudit(Month, later: true)).Headers.Location!;

        server.Stop();
        foreach (var answer in new[]
        {
            await client.PostAudit([.. service.ExampleRecord.With(_ => { })], later: true), await client.GetAsync(audit), await client.GetAsync("/v1/audits"),
            await client.GetAsync($"{audit}/findings"), await client.PostRecord(service.ExampleRecord),

            // Without the earlier visits to its appliance a record would be judged otherwise than with them.
            await client.PostRecord(service.ExampleRecord, "?store=false"),
        })
        {
            Assert.Equal("/problems/store-unavailable", (await answer.Read(HttpStatusCode.ServiceUnavailable))["type"].Text());
            Assert.NotNull(answer.Headers.RetryAfter);
        }

        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/health/live")).StatusCode);

        server.Start();
        Assert.Equal("completed", (await client.Completed(audit))["state"].Text());
        Assert.Equal(await client.Said(undisturbed), await client.Said(audit));
        Assert.Equal(2, (await client.GetJson("/v1/audits"))["total"].Number());
    }

    private static string[] Arguments(string store) => ["--urls=http://127.0.0.1:0", "--Audits:LeaseSeconds=2", store];
}
