using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Api.Tests.Contract;
using Storage.Keys;

namespace Api.Tests.Keys;

/// <summary>What one tenant has stored is not there for another: every route of the document that takes an id. New routes are taken in by themselves.</summary>
public sealed class TenantTests(ServiceWithKeys service) : IClassFixture<ServiceWithKeys>, IAsyncLifetime
{
    private static readonly Dictionary<string, string> Ids = new(StringComparer.Ordinal);
    private HttpClient _a = null!;
    private HttpClient _b = null!;

    /// <summary>Names of what is nobody's: the catalogue, the computations, and a line within an audit.</summary>
    private static readonly string[] Public = ["ruleId", "name", "line"];

    public static TheoryData<string> WithId => [.. PublishedContract.V1.Operations.Where(operation => operation.IsStrict && IdsOf(operation).Any()).Select(operation => operation.Id)];

    public static TheoryData<string> Lists => [.. PublishedContract.V1.Operations.Where(operation => operation.IsStrict && operation.Method == "GET" && !operation.Path.Contains('{', StringComparison.Ordinal)).Select(operation => operation.Id)];

    public async Task InitializeAsync()
    {
        (_a, _b) = (await service.ClientOf("a", KeyScope.Admin), await service.ClientOf("b", KeyScope.Admin));
        if (Ids.Count > 0)
            return;

        await (await _b.PutAsync("/v1/appliance-profiles/of-b", Calls.Json("{}"))).Read(HttpStatusCode.Created);
        var record = service.Inner.ExampleRecord.With(record => record["appliance"]!["serialNumber"] = "SERIAL-OF-B");
        var evaluation = await (await _b.PostRecord(record)).Read(HttpStatusCode.Created);
        var audit = (await _b.PostAudit(record.With(_ => { }), later: true)).Headers.Location!;
        await _b.Completed(audit);
        var preview = (await _b.PostAsync("/v1/rule-changes/preview", Calls.Json("""{"asOf":"2026-10-12"}"""))).Headers.Location!;
        await _b.Completed(preview);
        Ids["previewId"] = preview.ToString().Split('/')[^1];
        Ids["profileId"] = "of-b";
        Ids["evaluationId"] = evaluation["evaluationId"].Text();
        Ids["auditId"] = audit.ToString().Split('/')[^1];
        Ids["serialNumber"] = "SERIAL-OF-B";
    }

    public Task DisposeAsync() => Task.CompletedTask;

    [Theory, MemberData(nameof(WithId))]
    public async Task Another_tenants_id_is_not_found(string operation)
    {
        var found = Requests.Find(operation);
        Assert.All(IdsOf(found), id => Assert.True(Ids.ContainsKey(id), $"{found}: have these tests store something with a {id} of its own."));

        var theirs = await _a.SendAsync(Requests.Of(found, service.Inner.ExampleRecord, Ids));
        var own = await _b.SendAsync(Requests.Of(found, service.Inner.ExampleRecord, Ids));

        if (found.Method == "PUT")
        {
            // What is saved under a name of the caller's own is the caller's own.
            Assert.NotEqual(HttpStatusCode.NotFound, theirs.StatusCode);
            return;
        }

        Assert.Equal("/problems/not-found", (await theirs.Read(HttpStatusCode.NotFound))["type"].Text());
        Assert.True(own.IsSuccessStatusCode, $"{found}: {own.StatusCode}, so that the 404 before proves nothing.");
    }

    [Theory, MemberData(nameof(Lists))]
    public async Task Another_tenants_things_are_in_no_list(string operation)
    {
        var found = Requests.Find(operation);
        var nobodys = await Listed(await service.ClientOf("who-has-nothing", KeyScope.Admin));
        var own = await Listed(_b);

        Assert.All(Ids.Values, id => Assert.DoesNotContain(id, nobodys, StringComparison.Ordinal));
        // What is everybody's is the same for all; of what is stored its owner sees more, so that the absence above proves something.
        Assert.Equal(found.Scope is null, nobodys == own);

        async Task<string> Listed(HttpClient client)
        {
            var request = Requests.Of(found, []);
            if (operation is "listDueDates" or "getDueCalendar")
                request.RequestUri = new($"{request.RequestUri}?from=2026-09-14&to=2031-01-01", UriKind.Relative); // By default the next weeks alone, in which nothing falls due.
            var answer = await client.SendAsync(request);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            return await answer.Content.ReadAsStringAsync();
        }
    }

    [Fact]
    public async Task Another_tenants_visits_are_no_history_and_no_archive()
    {
        var earlier = await (await _b.PostRecord(Visit("earlier", 2025))).Read(HttpStatusCode.Created);
        var own = await (await _b.PostRecord(Visit("later", 2026))).Read(HttpStatusCode.Created);
        var stranger = await service.ClientOf("who-had-nothing", KeyScope.Admin);
        var theirs = await (await stranger.PostRecord(Visit("later", 2026))).Read(HttpStatusCode.Created);

        Assert.Equal(earlier["evaluationId"].Text(), own["context"]!["previousEvaluationId"].Text());
        Assert.Equal("{}", theirs["context"]!.ToJsonString());

        // Of all that is stored, a preview of theirs judges the one record that is their own.
        var preview = (await stranger.PostAsync("/v1/rule-changes/preview", Calls.Json("""{"asOf":"2026-10-12"}"""))).Headers.Location!;
        Assert.Equal(1, (await stranger.Completed(preview))["evaluations"]!["judged"]!.GetValue<int>());

        byte[] Visit(string recordId, int year) => service.Inner.ExampleRecord.With(node =>
        {
            node["recordId"] = recordId;
            node["appliance"]!["serialNumber"] = "HISTORY-OF-B";
            node["startedAt"] = $"{year}-09-10T09:00:00+01:00";
            node["finishedAt"] = $"{year}-09-10T10:25:00+01:00";
            if (year == 2025)
                node["previousVisit"] = JsonNode.Parse("""{"deemedOn":"2020-01-05"}""");
            else
                node.AsObject().Remove("previousVisit");
        });
    }

    [Fact]
    public async Task A_profile_saved_under_another_tenants_name_is_ones_own()
    {
        await (await _a.PutAsync("/v1/appliance-profiles/shared", Calls.Json("""{"coPpmMax":100}"""))).Read(HttpStatusCode.Created);
        await (await _b.PutAsync("/v1/appliance-profiles/shared", Calls.Json("""{"coPpmMax":200}"""))).Read(HttpStatusCode.Created);

        Assert.Equal(100, (await _a.GetJson("/v1/appliance-profiles/shared"))["limits"]!["coPpmMax"]!.GetValue<int>());
    }

    [Theory]
    [InlineData("supersedes", "evaluationId")]
    [InlineData("profileId", "profileId")]
    public async Task A_record_cannot_reach_for_what_is_another_tenants(string member, string id)
    {
        var record = service.Inner.ExampleRecord.With(record => (member == "profileId" ? record["appliance"]! : record)[member] = Ids[id]);

        var problem = await (await _a.PostRecord(record)).Read(HttpStatusCode.UnprocessableEntity);

        Assert.Equal(["unknownReference"], problem["errors"].Texts("code"));
    }

    [Theory]
    [InlineData("/v1/evaluations")]
    [InlineData("/v1/audits")]
    public async Task A_key_for_a_repeated_request_is_each_tenants_own(string path)
    {
        var (first, second) = (await Post(_a), await Post(_b));

        Assert.NotEqual(first.Headers.Location, second.Headers.Location);

        Task<HttpResponseMessage> Post(HttpClient client)
        {
            var content = new ByteArrayContent(path == "/v1/audits" ? Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(service.Inner.ExampleRecord).ReplaceLineEndings("")) : service.Inner.ExampleRecord);
            content.Headers.ContentType = new(path == "/v1/audits" ? AuditCalls.Ndjson : "application/json");
            return client.SendAsync(new HttpRequestMessage(HttpMethod.Post, path) { Content = content, Headers = { { "Idempotency-Key", "the-same" } } });
        }
    }

    private static IEnumerable<string> IdsOf(Operation operation) =>
        operation.Path.Split('/').Where(part => part.StartsWith('{')).Select(part => part[1..^1]).Except(Public, StringComparer.Ordinal);
}
