using System.Net;

namespace Api.Tests;

/// <summary>Services and databases that end in the middle of an audit or a preview. tests/long/kill does the same fifty times on twenty thousand records.</summary>
[Collection("Heavy processes")]
public sealed class KillTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const int Records = 2000;
    private const int Archive = 1000;

    private static readonly string Candidate = RuleChangeTests.Body(RuleChangeTests.Line(1.1m));

    // Each of another boiler: an audit that is sent again sees the visits of the first one, and of one boiler at one hour they would be one visit.
    private byte[] Month => AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, Records).Select((record, number) => record.With(node => node["appliance"]!["serialNumber"] = $"QB-M-{number}")));

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public Task Killed_over_and_over_an_audit_says_what_an_undisturbed_one_says(string kind) =>
        KillOverAndOver(kind, async client => (await client.PostAudit(Month, later: true)).Headers.Location!, "records", "findings", kills: 4);

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public Task Killed_over_and_over_a_preview_says_what_an_undisturbed_one_says(string kind) =>
        KillOverAndOver(kind, async client => (await client.PostAsync(RuleChangeTests.Path, Calls.Json(Candidate))).Headers.Location!, "evaluations", "changes", kills: 2, PostArchive);

    /// <summary>Begins the same thing twice, the second time among kills.</summary>
    /// <param name="kind">Of the store.</param>
    /// <param name="begin">Gives the path of what it began.</param>
    /// <param name="counts">Where its status says how far it is.</param>
    /// <param name="rows">What its rows are called.</param>
    /// <param name="kills">How many, before a last one.</param>
    /// <param name="prepare">Comes before.</param>
    private static async Task KillOverAndOver(string kind, Func<HttpClient, Task<Uri>> begin, string counts, string rows, int kills, Func<HttpClient, Task>? prepare = null)
    {
        var folder = Directory.CreateTempSubdirectory("kill-");
        var arguments = Arguments(kind == "sqlite" ? $"--Store:Path={Path.Combine(folder.FullName, "c.db")}" : $"--Store:ConnectionString={PrivatePostgreSql.NewDatabase()}");

        // One instance at a time on SQLite, three on PostgreSQL, of which every kill takes another.
        var instances = new RunningService[kind == "sqlite" ? 1 : 3];
        for (var index = 0; index < instances.Length; index++)
            instances[index] = new RunningService(arguments);
        using var first = await instances[0].Listening();
        await (prepare?.Invoke(first) ?? Task.CompletedTask);
        var undisturbed = await begin(first);
        await first.Completed(undisturbed);
        var disturbed = await begin(first);

        var atFirstKill = (await first.GetJson(disturbed.ToString()))[counts]!["judged"].Number();
        for (var kill = 0; kill < kills; kill++)
        {
            var index = kill % instances.Length;
            instances[index].Kill();
            instances[index].Dispose();
            instances[index] = new RunningService(arguments);
            using var client = await instances[index].Listening();
            await Task.Delay(200 * kill);
        }

        instances[0].Kill();
        instances[0].Dispose();
        instances[0] = new RunningService(arguments);
        using var last = await instances[0].Listening();
        var status = await last.Completed(disturbed);

        Assert.Equal("completed", status["state"].Text());
        Assert.True(atFirstKill < status[counts]!["judged"].Number(), "It was done before it was killed: this proves nothing.");
        Assert.Equal(await last.Said(undisturbed, rows), await last.Said(disturbed, rows));
        Array.ForEach(instances, instance => instance.Dispose());
        folder.Delete(recursive: true);
    }

    /// <summary>Evaluations of as many boilers, of which every second lies below the candidate's limit.</summary>
    private Task PostArchive(HttpClient client) => Parallel.ForAsync(0, Archive, async (number, _) =>
    {
        var record = service.ExampleRecord.With(record =>
        {
            record["recordId"] = $"K-{number}";
            record["appliance"]!["serialNumber"] = $"QB-K-{number}";
            record["water"]!["coldFillBar"] = number % 2 == 0 ? 1.0m : 1.2m;
        });
        await (await client.PostRecord(record)).Read(HttpStatusCode.Created);
    });

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

    private static string[] Arguments(string store) => ["--urls=http://127.0.0.1:0", "--Audits:LeaseSeconds=2", "--Store:Create=true", store];
}
