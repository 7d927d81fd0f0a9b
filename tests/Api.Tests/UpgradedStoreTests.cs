using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>
/// An instance that is still running when a newer version upgrades its store. The newer version is told by what it would leave there: a script
/// of a later number among those that were executed.
/// </summary>
[Collection("Heavy processes")]
public sealed class UpgradedStoreTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const string Upgrade = "INSERT INTO schemaversions (scriptname, applied) VALUES ('9001-of-a-newer-version.sql', '2030-01-01')";

    /// <summary>As if it had not been judged yet.</summary>
    private const string MakeWait = "UPDATE audits SET state = 'running'; UPDATE audit_chunks SET is_done = 0, claim = NULL, lease_until = NULL";

    private const string Taken = "SELECT COUNT(*) FROM audit_chunks WHERE claim IS NOT NULL";

    /// <summary>Longer than a worker waits before it looks for work again.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1.5);

    private static readonly string[] Tables = ["evaluations", "visits", "journal", "audits", "appliance_profiles", "idempotency_keys", "preview_changes"];

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task An_instance_older_than_its_store_reads_writes_nothing_and_says_that_it_has_to_be_replaced(string kind)
    {
        using var store = new StoreOfKind(kind);
        using var old = new RunningService("--urls=http://127.0.0.1:0", "--Store:Create=true", "--Audits:Workers=1", store.Setting);
        using var client = await old.Listening();
        var evaluation = (await client.PostRecord(service.ExampleRecord)).Headers.Location!;
        var audit = (await client.PostAudit(service.ExampleRecord.With(_ => { }), later: true)).Headers.Location!;
        await client.Completed(audit);
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/health/ready")).StatusCode);

        await store.Execute($"BEGIN; {Upgrade}; {MakeWait}; COMMIT");
        var before = await Counts(store);

        await IsRefused(client.GetAsync("/health/ready"));
        await IsRefused(client.PostRecord(service.ExampleRecord));
        await IsRefused(client.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/v1/evaluations") { Content = Calls.Json(service.ExampleRecord), Headers = { { "Idempotency-Key", "one" } } }));
        await IsRefused(client.PostAudit(service.ExampleRecord.With(_ => { }), later: true));
        await IsRefused(client.DeleteAsync(audit));
        await IsRefused(client.PutAsync("/v1/appliance-profiles/tarn-24", Calls.Json("""{"coCo2RatioMax":0.004}""")));
        await IsRefused(client.PostAsJsonAsync("/v1/rule-changes/preview", new { asOf = "2026-10-12" }));
        await Task.Delay(Patience);

        Assert.Equal(before, await Counts(store));
        Assert.Equal(0, await store.Number(Taken));
        Assert.Equal("running", (await client.GetJson(audit.ToString()))["state"].Text());
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(evaluation)).StatusCode);
        Assert.Equal("pass", (await (await client.PostRecord(service.ExampleRecord, "?store=false")).Read())["outcome"].Text());
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/health/live")).StatusCode);
    }

    private static async Task IsRefused(Task<HttpResponseMessage> request)
    {
        using var response = await request;
        var problem = await response.Read(HttpStatusCode.ServiceUnavailable);
        Assert.Equal("/problems/store-unavailable", problem["type"].Text());
        Assert.Matches("^[^.]*upgraded by a newer version[^.]*has to be replaced[^.]*\\.$", problem["detail"].Text());
        Assert.NotNull(response.Headers.RetryAfter);
    }

    private static async Task<string> Counts(StoreOfKind store)
    {
        var counts = new JsonObject();
        foreach (var table in Tables)
            counts[table] = await store.Count(table);
        return counts.ToJsonString();
    }
}
