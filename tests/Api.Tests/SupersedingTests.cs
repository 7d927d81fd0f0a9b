using System.Net;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>A danger that was told once goes by a reason, and of the same appliance, or not at all.</summary>
public sealed class SupersedingTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task A_passing_record_of_another_boiler_erases_no_danger()
    {
        var danger = await Post(Record("S-1", coPpm: 2000));

        foreach (var change in (Action<JsonNode>[])[
            node => node["appliance"]!["serialNumber"] = "S-2",
            node => node["appliance"]!["maker"] = "Another",
            node => { node["appliance"]!.AsObject().Remove("serialNumber"); node["premises"]!.AsObject().Remove("reference"); }])
        {
            var other = Record("S-1", node => { node["supersedes"] = danger; node["supersedesBecause"] = Because("mistyped"); change(node); });
            var problem = await (await _client.PostRecord(other)).Read(HttpStatusCode.UnprocessableEntity);
            Assert.Equal(["otherAppliance"], problem["errors"].Texts("code"));
            Assert.Equal(["#/supersedes"], problem["errors"].Texts("pointer"));
            Assert.Equal(["otherAppliance"], (await (await _client.PostAudit(AuditCalls.Lines([other]))).ReadLines())[0]["problem"]!["errors"].Texts("code"));
            var audit = (await _client.PostAudit(AuditCalls.Lines([other]), later: true)).Headers.Location!;
            await _client.Completed(audit);
            var rows = (await _client.GetJson($"{audit}/findings?limit=500"))["items"]!.AsArray();
            var row = Assert.Single(rows)!;
            Assert.Equal((1, "rejected", "#/supersedes"), (row["line"].Number(), row["outcome"].Text(), row["subject"].Text()));
            Assert.Equal("otherAppliance", row["code"].Text());
        }

        Assert.Equal([danger], (await _client.GetJson("/v1/appliances/S-1"))["visits"].Texts("evaluationId"));
    }

    [Fact]
    public async Task What_gets_better_needs_a_reason_and_the_answer_says_what_went()
    {
        var danger = await Post(Record("S-3", coPpm: 2000));
        var better = Record(" s-3 ", node => { node["supersedes"] = danger; node["appliance"]!["maker"] = "QUILLBACK"; });

        var problem = await (await _client.PostRecord(better)).Read(HttpStatusCode.UnprocessableEntity);
        Assert.Equal(["#/supersedesBecause"], problem["errors"].Texts("pointer"));
        Assert.Contains("from unsafe to pass", problem["errors"]![0]!["detail"].Text(), StringComparison.Ordinal);

        var posted = await _client.PostRecord(better.With(node => node["supersedesBecause"] = Because("mistyped")));
        var replaced = (await posted.Read(HttpStatusCode.Created))["supersedes"]!;
        Assert.Equal((danger, "unsafe", false), (replaced["evaluationId"].Text(), replaced["outcome"].Text(), replaced["stillStands"]!.GetValue<bool>()));
        var ratio = replaced["gone"]!.AsArray().First(gone => gone!["ruleId"].Text() == "combustion-ratio")!;
        Assert.Equal(("unsafe", "pass"), (ratio["outcome"].Text(), ratio["now"].Text()));

        var read = await _client.GetAsync($"/v1/evaluations/{danger}");
        Assert.Equal($"<{posted.Headers.Location}>; rel=\"successor-version\"", Assert.Single(read.Headers.GetValues("Link")));
        Assert.Equal("unsafe", (await read.Read())["outcome"].Text());
    }

    [Fact]
    public async Task What_gets_worse_needs_no_reason()
    {
        var good = await Post(Record("S-4"));
        Assert.Empty((await (await _client.PostRecord(Record("S-4", node => node["supersedes"] = good, coPpm: 2000))).Read(HttpStatusCode.Created))["supersedes"]!["gone"]!.AsArray());
    }

    [Fact]
    public async Task A_danger_recorded_of_the_wrong_appliance_stands_until_somebody_decides()
    {
        var danger = await Post(Record("S-5", coPpm: 2000));

        var moved = await (await _client.PostRecord(Record("S-6", node => { node["supersedes"] = danger; node["supersedesBecause"] = Because("wrongAppliance"); }))).Read(HttpStatusCode.Created);

        Assert.True(moved["supersedes"]!["stillStands"]!.GetValue<bool>());
        Assert.Equal([danger], (await _client.GetJson("/v1/appliances/S-5"))["visits"].Texts("evaluationId"));
        Assert.False((await _client.GetAsync($"/v1/evaluations/{danger}")).Headers.Contains("Link"));

        // It is decided by a record of the appliance itself.
        var decided = await Post(Record("S-5", node => { node["recordId"] = "decided"; node["supersedes"] = danger; node["supersedesBecause"] = Because("mistyped"); }));
        Assert.Equal([decided], (await _client.GetJson("/v1/appliances/S-5"))["visits"].Texts("evaluationId"));
    }

    private byte[] Record(string serial, int coPpm) => Record(serial, _ => { }, coPpm);

    private byte[] Record(string serial, Action<JsonNode>? change = null, int coPpm = 96) => service.ExampleRecord.With(node =>
    {
        node["appliance"]!["serialNumber"] = serial;
        node["combustion"]!["readings"]![0]!["coPpm"] = coPpm;
        change?.Invoke(node);
    });

    private static JsonObject Because(string reason) => new() { ["reason"] = reason, ["note"] = "invented for this test" };

    private async Task<string> Post(byte[] record) => (await (await _client.PostRecord(record)).Read(HttpStatusCode.Created))["evaluationId"].Text();
}
