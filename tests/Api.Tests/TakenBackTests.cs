using System.Net;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>
/// An answer that names a danger shows which value to leave out: sent again without it, a record of the same visit stays open until it says why;
/// "Withdrawn values" on the page of duties.
/// </summary>
public sealed class TakenBackTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task A_danger_that_was_told_is_not_left_out_of_the_same_record_without_a_reason()
    {
        Assert.Equal("unsafe", (await Post("W-1", LooseFlue))["outcome"].Text());

        // However often it is sent.
        IsHeld(await Post("W-1", _ => { }));
        var held = await Post("W-1", _ => { });
        IsHeld(held);
        var page = await service.CreateDefaultClient().GetStringAsync($"/evaluations/{held["evaluationId"].Text()}");
        Assert.Contains("named in an earlier answer to this visit", page, StringComparison.Ordinal);
        Assert.Contains($"/evaluations/{held["context"]!["saidBefore"]![0]!["evaluationId"].Text()}", page, StringComparison.Ordinal);

        var because = await Post("W-1", node => node["work"]!["withdrawn"] = JsonNode.Parse("""[{ "what": "/flue/supportsOk", "because": "wrongAppliance", "note": "the boiler next door" }]"""));
        Assert.True(because["closing"]!["allowed"]!.GetValue<bool>());
        Assert.Equal("advisory", because["outcome"].Text());
        Assert.Contains(because["findings"]!.AsArray(), finding => finding!["ruleId"].Text() == "value-taken-back" && finding["outcome"].Text() == "advisory");

        // Said once, it is not asked again.
        Assert.True((await Post("W-1", _ => { }))["closing"]!["allowed"]!.GetValue<bool>());
    }

    [Fact]
    public async Task Nor_by_another_maker_or_without_the_serial_number()
    {
        await Post("W-5", LooseFlue);
        foreach (var change in (Action<JsonNode>[])[node => node["appliance"]!["maker"] = "Another", node => node["appliance"]!.AsObject().Remove("serialNumber"), node => node["appliance"]!.AsObject().Remove("maker")])
        {
            var said = await Post("W-5", change);
            Assert.False(said["closing"]!["allowed"]!.GetValue<bool>());
            Assert.Contains("danger-taken-back", said["closing"]!["blockedBy"]!.AsArray().Select(one => one.Text()));
        }
    }

    [Fact]
    public async Task Nor_by_stating_the_visit_before()
    {
        await Post("W-2", LooseFlue);
        IsHeld(await Post("W-2", node => node["previousVisit"] = JsonNode.Parse("""{ "finishedAt": "2025-10-01T10:00:00+01:00" }""")));
    }

    [Fact]
    public async Task What_an_earlier_visit_left_is_asked_for_whatever_visit_the_record_states()
    {
        await Post("W-4", node =>
        {
            var moved = JsonNode.Parse(node.ToJsonString().Replace("2026-09-14", "2026-08-10", StringComparison.Ordinal))!.AsObject();
            node.AsObject().Clear();
            foreach (var (name, value) in moved)
                node[name] = value?.DeepClone();
            LooseFlue(node);
        });
        var later = await Post("W-4", node => node["previousVisit"] = JsonNode.Parse("""{ "finishedAt": "2025-10-01T10:00:00+01:00" }"""));
        Assert.Equal(["danger-left-before"], later["closing"]!["blockedBy"]!.AsArray().Select(one => one.Text()));
    }

    [Fact]
    public async Task Nor_in_an_audit()
    {
        await Post("W-3", LooseFlue);
        var line = service.ExampleRecord.With(node => Set(node, "W-3", _ => { }));
        var answer = await (await _client.PostAudit(AuditCalls.Lines([line]))).ReadLines();

        IsHeld(answer.Select(one => one["evaluation"]).Single(one => one is not null)!);
    }

    private static void IsHeld(JsonNode said)
    {
        Assert.Equal(("incomplete", false), (said["outcome"].Text(), said["closing"]!["allowed"]!.GetValue<bool>()));
        Assert.Equal(["danger-taken-back"], said["closing"]!["blockedBy"]!.AsArray().Select(one => one.Text()));
        Assert.Equal(["/work/withdrawn"], said["missing"].Texts("pointer"));
        Assert.Equal(("notExcluded", false), (said["situation"]!["state"].Text(), said["situation"]!["handled"]!.GetValue<bool>()));
    }

    private static void LooseFlue(JsonNode node) => node["flue"]!["supportsOk"] = false;

    private static void Set(JsonNode node, string serial, Action<JsonNode> change)
    {
        (node["recordId"], node["appliance"]!["serialNumber"], node["premises"]!["reference"]) = (serial, serial, $"P-{serial}");
        node.AsObject().Remove("previousVisit");
        change(node);
    }

    private async Task<JsonNode> Post(string serial, Action<JsonNode> change) =>
        await (await _client.PostRecord(service.ExampleRecord.With(node => Set(node, serial, change)), "?include=all")).Read(HttpStatusCode.Created);
}
