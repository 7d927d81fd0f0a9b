namespace Api.Tests;

/// <summary>Services that are killed in the middle of an audit. tests/long/audit-kill does the same fifty times on twenty thousand records.</summary>
public sealed class AuditKillTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const int Records = 2000;

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Killed_over_and_over_an_audit_says_what_an_undisturbed_one_says(string kind)
    {
        var folder = Directory.CreateTempSubdirectory("kill-");
        string[] arguments =
        [
            "--urls=http://127.0.0.1:0", "--Audits:LeaseSeconds=2",
            kind == "sqlite" ? $"--Store:Path={Path.Combine(folder.FullName, "c.db")}" : $"--Store:ConnectionString={PrivatePostgreSql.NewDatabase()}",
        ];
        var body = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, Records));
        Uri undisturbed, audit;
        using (var first = new RunningService(arguments))
        {
            using var client = await first.Listening();
            undisturbed = (await client.PostAudit(body, later: true)).Headers.Location!;
            await client.Completed(undisturbed);
            audit = (await client.PostAudit(body, later: true)).Headers.Location!;
            first.Kill();
        }

        var stages = new List<int>();
        for (var kills = 1; kills <= 3; kills++)
        {
            using var next = new RunningService(arguments);
            using var client = await next.Listening();
            await Task.Delay(300 * kills);
            stages.Add((await client.GetJson(audit.ToString()))["records"]!["judged"]!.GetValue<int>());
            next.Kill();
        }

        using var last = new RunningService(arguments);
        using var lastClient = await last.Listening();
        var status = await lastClient.Completed(audit);

        Assert.Equal("completed", status["state"].Text());
        Assert.True(stages[0] < status["records"]!["judged"]!.GetValue<int>(), "It was done before it was killed: this proves nothing.");
        Assert.Equal(await lastClient.Said(undisturbed), await lastClient.Said(audit));
        last.Kill();
        folder.Delete(recursive: true);
    }
}
