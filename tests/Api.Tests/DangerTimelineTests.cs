using System.Net;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>
/// One boiler through a danger: left on, turned off, nobody in, passed over by another engineer, put right, a month later; section 4 of the
/// page of duties. What each answer and the due list say on each day.
/// </summary>
public sealed class DangerTimelineTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const string TurnedOff = """
        { "description": "flue bracket gone, a joint hangs", "location": "loft", "topic": "flue", "subject": "/flue/supportsOk", "class": "atRisk", "cause": "installation",
          "mechanism": "productsNotRemoved", "action": "turnedOff", "isolatedAt": "applianceValve", "told": ["responsiblePerson", "owner"], "permission": "given",
          "userToldNotToUse": true, "labelled": true, "noticeNumber": "N-1", "copyLeft": true, "userSigned": true, "notifiedOn": "2026-08-10",
          "reportable": { "decision": "no", "reason": "hung wrongly by whoever put it in, and seen before it parted" } }
        """;

    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task A_danger_waits_until_it_is_put_right_and_seen_again()
    {
        var found = await Post("a", "2026-08-10", node => node["flue"]!["supportsOk"] = false);
        Demand(found, "unsafe", closes: false, "standing", handled: false);
        Assert.Equal("2026-08-10", await WaitsFrom());

        var off = await Post("b", "2026-08-10", node =>
        {
            node["flue"]!["supportsOk"] = false;
            node["defects"] = new JsonArray(JsonNode.Parse(TurnedOff));
            node["appliance"]!["stateOnLeaving"] = "turnedOff";
            node["appliance"]!["leftOffBecause"] = "danger";
        });
        Demand(off, "unsafe", closes: true, "takenOutOfUse", handled: true);
        Assert.Equal("visit", off["closing"]!["closesAs"].Text());
        Assert.Contains(off["due"]!.AsArray(), due => due!["beforeUse"]?.GetValue<bool>() == true && due["ruleId"].Text() == "flue-supports");

        var nobodyIn = await Post("c", "2026-08-12", NobodyIn);
        Assert.True(nobodyIn["closing"]!["allowed"]!.GetValue<bool>());
        Assert.Equal("2026-08-10", await WaitsFrom());

        var passedOver = await Post("d", "2026-08-14", _ => { });
        Assert.Equal(["danger-left-before"], passedOver["closing"]!["blockedBy"]!.AsArray().Select(one => one.Text()));
        Assert.Equal(["/defects"], passedOver["missing"]!.AsArray().Select(one => one!["pointer"].Text()));
        Assert.Equal("2026-08-10", await WaitsFrom());

        var putRight = await Post("e", "2026-08-17", node =>
        {
            var defect = JsonNode.Parse(TurnedOff)!;
            (defect["action"], defect["isolatedAt"], defect["reexaminedAt"]) = ("rectified", null, "2026-08-17T10:15:00+01:00");
            node["defects"] = new JsonArray(defect);
        });
        Demand(putRight, "advisory", closes: true, "putRight", handled: true);
        Assert.Equal("service", putRight["closing"]!["closesAs"].Text());
        Assert.Null(await WaitsFrom());

        var later = await Post("f", "2026-09-14", _ => { });
        Assert.Null(later["situation"]);
        Assert.DoesNotContain(later["missing"]!.AsArray(), one => one!["pointer"].Text() == "/defects");
    }

    private static void Demand(JsonNode said, string outcome, bool closes, string state, bool handled)
    {
        Assert.Equal((outcome, closes), (said["outcome"].Text(), said["closing"]!["allowed"]!.GetValue<bool>()));
        var situation = said["situation"]!;
        Assert.Equal((state, handled, handled), (situation["state"].Text(), situation["handled"]!.GetValue<bool>(), situation["open"]!.AsArray().Count == 0));
    }

    private static void NobodyIn(JsonNode node)
    {
        node["work"] = JsonNode.Parse("""{ "result": "noAccess", "tried": "rang twice", "leftBehind": "a card" }""");
        foreach (var section in (string[])["combustion", "disturbedJoints", "tightnessTests", "gasSupply", "partsFitted", "heatExchanger", "burner", "flue", "water", "condensate", "electrical", "ambientCo", "safetyDevices", "ventilation", "pipework", "coAlarm"])
            node.AsObject().Remove(section);
        node["appliance"]!.AsObject().Remove("stateOnLeaving");
    }

    /// <summary>The day from which something waits until the boiler is used again; null where nothing does. Of a list that begins a year later.</summary>
    private async Task<string?> WaitsFrom() => (await _client.GetJson("/v1/due?from=2027-10-01&to=2028-01-01"))["items"]!.AsArray()
        .SingleOrDefault(item => item!["kind"].Text() == "beforeUse" && item["serialNumber"]?.GetValue<string>() == "T-1")?["by"].Text();

    private async Task<JsonNode> Post(string id, string day, Action<JsonNode> change) => await (await _client.PostRecord(service.ExampleRecord.With(node =>
    {
        var moved = JsonNode.Parse(node.ToJsonString().Replace("2026-09-14", day, StringComparison.Ordinal))!.AsObject();
        node.AsObject().Clear();
        foreach (var (name, value) in moved)
            node[name] = value?.DeepClone();
        (node["recordId"], node["appliance"]!["serialNumber"]) = ($"T-1 {id}", "T-1");
        node.AsObject().Remove("previousVisit");
        change(node);
    }))).Read(HttpStatusCode.Created);
}
