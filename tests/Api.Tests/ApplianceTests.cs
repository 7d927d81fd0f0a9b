using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Mvc.Testing;

namespace Api.Tests;

/// <summary>The history of an appliance, and what it does to the next record.</summary>
public sealed class ApplianceTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task Visits_are_shown_the_latest_first_each_with_the_evaluation_that_counts()
    {
        var first = await Post("AH-1", "r1", "2024-09-10");
        var wrong = await Post("AH-1", "r2", "2025-09-10");
        var right = await Post("AH-1", "r2", "2025-09-10", node => node["supersedes"] = wrong["evaluationId"]!.Text());

        var timeline = await _client.GetJson("/v1/appliances/AH-1?maker=Quillback");
        Assert.Equal([right["evaluationId"].Text(), first["evaluationId"].Text()], timeline["visits"].Texts("evaluationId"));
        Assert.Equal(("Quillback", 2), (timeline["maker"].Text(), timeline["total"]!.GetValue<int>()));

        var all = await _client.GetJson("/v1/appliances/AH-1/evaluations?limit=2");
        Assert.Equal(3, all["total"]!.GetValue<int>());
        var rest = await _client.GetJson($"/v1/appliances/AH-1/evaluations?limit=2&next={Uri.EscapeDataString(all["next"].Text())}");
        var shown = all["items"]!.AsArray().Concat(rest["items"]!.AsArray()).ToList();
        Assert.Equal(3, shown.Select(item => item!["evaluationId"].Text()).Distinct().Count());
        Assert.Equal(right["evaluationId"].Text(), shown.Single(item => item!["evaluationId"].Text() == wrong["evaluationId"].Text())!["supersededBy"].Text());
    }

    /// <summary>Of five values each above the one before, one order in 5! = 120 is as strict (Kendall 1938); the slope is that of equal steps.</summary>
    [Fact]
    public async Task Readings_that_rise_from_visit_to_visit_are_shown_with_slope_and_chance()
    {
        for (var year = 2022; year <= 2026; year++)
        {
            var co = 46 * (year - 2020);
            await Post("AH-10", $"r{year}", $"{year}-07-10", node =>
            {
                node["combustion"]!["readings"]![0]!["coPpm"] = co;
                node["partsFitted"] = new JsonArray();
            });
        }

        var trends = (await _client.GetJson("/v1/appliances/AH-10?limit=1"))["trends"]!.AsArray();
        var ratio = trends.Single(trend => trend!["quantity"].Text() == "coCo2Ratio")!;
        Assert.Equal((5, 5, "2022-07-10", "2026-07-10"), (ratio["visits"].Number(), ratio["ofOneInstrument"].Number(), ratio["firstOn"].Text(), ratio["lastOn"].Text()));
        Assert.Equal(0.008333m, ratio["chance"]!.GetValue<decimal>());
        Assert.Equal(46 / 92_000m, ratio["slopePerYear"]!.GetValue<decimal>(), 6);
        Assert.Contains("data-quantity=\"coCo2Ratio\"", await ((WebApplicationFactory<Program>)service).CreateClient().GetStringAsync("/appliances/AH-10"), StringComparison.Ordinal);

        await Post("AH-11", "r1", "2025-07-10");
        await Post("AH-11", "r2", "2026-07-10");
        var few = (await _client.GetJson("/v1/appliances/AH-11"))["trends"]!.AsArray().First(trend => trend!["quantity"].Text() == "coCo2Ratio")!;
        Assert.Equal((2, null), (few["visits"].Number(), few["slopePerYear"]));
    }

    [Fact]
    public async Task A_record_of_a_stored_audit_is_a_visit_and_what_was_said_of_it_is_read_by_its_id()
    {
        var record = service.ExampleRecord.With(node => (node["recordId"], node["appliance"]!["serialNumber"]) = ("r1", "AH-9"));
        var accepted = await _client.PostAudit([.. record, (byte)'\n'], later: true);
        await _client.Completed(accepted.Headers.Location!);

        var visit = Assert.Single((await _client.GetJson("/v1/appliances/AH-9?knownAt=2026-09-14T12:00:01Z"))["visits"]!.AsArray())!;
        var evaluation = await _client.GetJson($"/v1/evaluations/{visit["evaluationId"].Text()}");
        Assert.Equal(("r1", "pass", visit["evaluationId"].Text()), (evaluation["recordId"].Text(), evaluation["outcome"].Text(), evaluation["evaluationId"].Text()));
        Assert.Equal(record, await _client.GetByteArrayAsync($"/v1/evaluations/{visit["evaluationId"].Text()}/record"));
        var line = await _client.GetJson($"{accepted.Headers.Location}/records/1");
        Assert.Equal(visit["evaluationId"].Text(), line["evaluation"]!["evaluationId"].Text());
    }

    [Fact]
    public async Task What_had_not_been_said_yet_is_not_shown()
    {
        await Post("AH-2", "r1", "2024-09-10");

        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync("/v1/appliances/AH-2?knownAt=2026-09-14T11:59:59Z")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync("/v1/appliances/AH-2/evaluations?knownAt=2026-09-14T11:59:59Z")).StatusCode);
        Assert.Equal(1, (await _client.GetJson("/v1/appliances/AH-2?knownAt=2026-09-14T12:00:00Z"))["total"]!.GetValue<int>());
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync("/v1/appliances/AH-2?maker=Fernlea")).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync("/v1/appliances/AH-2?knownAt=2026-09-14")).StatusCode);
    }

    [Fact]
    public async Task The_previous_visit_comes_from_the_store_when_the_record_does_not_state_it()
    {
        var first = await Post("AH-3", "r1", "2025-06-10");
        var second = await Post("AH-3", "r2", "2026-09-01", node => node.AsObject().Remove("previousVisit"));

        Assert.Equal(first["evaluationId"].Text(), second["context"]!["previousEvaluationId"].Text());
        Assert.Contains(second["findings"]!.AsArray(), finding => finding!["ruleId"].Text() == "service-interval" && finding["outcome"].Text() == "advisory");
        Assert.Equal("{}", (await Post("AH-3", "r3", "2026-09-10"))["context"]!.ToJsonString());
    }

    [Fact]
    public async Task A_repair_does_not_set_the_landlords_clock_back()
    {
        await Post("AH-4", "r1", "2025-03-10", Let);
        await Post("AH-4", "r2", "2025-11-10", node =>
        {
            Let(node);
            node["jobType"] = "repair";
        });
        var third = await Post("AH-4", "r3", "2026-09-01", node =>
        {
            Let(node);
            node.AsObject().Remove("previousVisit");
        });

        var deadline = third["findings"]!.AsArray().Single(finding => finding!["ruleId"].Text() == "landlord-deadline")!;
        Assert.Contains("after the deadline of 10 March 2026", deadline["message"].Text(), StringComparison.Ordinal);

        static void Let(JsonNode node)
        {
            node["premises"]!["use"] = "rented";
            node["previousVisit"] = JsonNode.Parse("""{"deemedOn":"2024-01-05"}""");
        }
    }

    [Fact]
    public async Task An_audit_sees_history_as_well()
    {
        var first = await Post("AH-5", "r1", "2025-06-10");
        var line = Record("AH-5", "r2", "2026-09-01", node => node.AsObject().Remove("previousVisit"));
        var answer = await _client.PostAsync(AuditCalls.AtOnce, new StringContent(JsonNode.Parse(line)!.ToJsonString(), Encoding.UTF8, new System.Net.Http.Headers.MediaTypeHeaderValue("application/x-ndjson")));

        var judged = JsonNode.Parse((await answer.Content.ReadAsStringAsync()).Split('\n')[0])!;
        Assert.Equal(first["evaluationId"].Text(), judged["evaluation"]!["context"]!["previousEvaluationId"].Text());
    }

    private byte[] Record(string serial, string recordId, string day, Action<JsonNode>? change = null) => service.ExampleRecord.With(node =>
    {
        node["recordId"] = recordId;
        node["appliance"]!["serialNumber"] = serial;
        node["previousVisit"] = JsonNode.Parse("""{"deemedOn":"2020-01-05"}""");
        node["startedAt"] = $"{day}T09:00:00+01:00";
        node["finishedAt"] = $"{day}T10:25:00+01:00";
        change?.Invoke(node);
    });

    private async Task<JsonNode> Post(string serial, string recordId, string day, Action<JsonNode>? change = null) =>
        await (await _client.PostRecord(Record(serial, recordId, day, change))).Read(HttpStatusCode.Created);
}
