using System.Net;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>
/// One boiler that was left off before it could be seen running: nobody in, left in use without the tests, left off again, made up, a month
/// later; "return after a deferral" of the page of duties. What each answer and the due list say on each day.
/// </summary>
public sealed class DeferralTimelineTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const string Because = "the visit of 2026-08-10 put it off until the boiler is used again";

    private readonly HttpClient _client = service.CreateClient();

    [Theory]
    [InlineData("gasOff", "noGas")]
    [InlineData("awaitingParts", "awaitingParts")]
    public async Task What_was_put_off_waits_until_it_is_made_up(string result, string leftOffBecause)
    {
        var serial = $"D-{result}";
        var off = await Post(serial, "a", "2026-08-10", node => LeaveOff(node, result, leftOffBecause));
        Demand(off, closes: true, "visit");
        Assert.Contains("proveCombustionCircuit", Deferred(off));
        Assert.Contains(off["due"]!.AsArray(), due => due!["beforeUse"]?.GetValue<bool>() == true && due["what"].Text().Contains("the burn is measured", StringComparison.Ordinal));
        Assert.Equal("2026-08-10", await WaitsFrom(serial));

        var nobodyIn = await Post(serial, "b", "2026-08-12", NobodyIn);
        Demand(nobodyIn, closes: true, "visit");
        Assert.Contains(nobodyIn["deferrals"]!.AsArray(), one => one!["part"].Text() == "proveCombustionCircuit/analysis" && one["evaluationId"].Text() == off["evaluationId"].Text());
        Assert.Equal("2026-08-10", await WaitsFrom(serial));

        // On a boiler of which nothing was put off the same two close.
        Demand(await Post($"{serial}-other", "c", "2026-08-14", SmallRepair), closes: true, "repair");
        Demand(await Post($"{serial}-another", "d", "2026-08-15", LandlordCheck), closes: true, "check");
        foreach (var passedOver in (JsonNode[])[await Post(serial, "c", "2026-08-14", SmallRepair), await Post(serial, "d", "2026-08-15", LandlordCheck), await Post(serial, "s", "2026-08-16", StatingAVisitBetween)])
        {
            Assert.False(passedOver["closing"]!["allowed"]!.GetValue<bool>());
            Assert.Contains("flue-co", passedOver["closing"]!["blockedBy"]!.AsArray().Select(one => one.Text()));
            var asked = Assert.Single(passedOver["missing"]!.AsArray(), one => one!["pointer"].Text() == "/combustion/readings")!;
            Assert.Contains(Because, asked["because"]!.AsArray().Select(one => one.Text()));
            var duty = Assert.Single(passedOver["duties"]!.AsArray(), one => one!["kind"].Text() == "proveCombustionCircuit")!;
            Assert.Equal(("must", "missing"), (duty["weight"].Text(), duty["state"].Text()));
            Assert.Contains(duty["because"]!.AsArray(), one => one!["words"].Text() == Because && one["evaluationId"].Text() == off["evaluationId"].Text());
            Assert.Equal("2026-08-10", await WaitsFrom(serial));
        }

        var offAgain = await Post(serial, "e", "2026-08-17", node =>
        {
            SmallRepair(node);
            LeaveOff(node, result, leftOffBecause);
        });
        Demand(offAgain, closes: true, "repair");
        Assert.Contains("proveCombustionCircuit", Deferred(offAgain));
        Assert.Equal("2026-08-17", await WaitsFrom(serial));

        var madeUp = await Post(serial, "f", "2026-08-20", _ => { });
        Demand(madeUp, closes: true, "service");
        Assert.All(madeUp["deferrals"]!.AsArray(), one => Assert.True(one!["madeUp"]!.GetValue<bool>()));
        Assert.DoesNotContain(madeUp["due"]!.AsArray(), due => due!["beforeUse"] is not null);
        Assert.Null(await WaitsFrom(serial));

        var later = await Post(serial, "g", "2026-09-14", SmallRepair);
        Demand(later, closes: true, "repair");
        Assert.Null(later["deferrals"]);
    }

    private static void Demand(JsonNode said, bool closes, string closesAs) =>
        Assert.Equal((closes, closesAs, ""), (said["closing"]!["allowed"]!.GetValue<bool>(), said["closing"]!["closesAs"].Text(), string.Join(", ", said["closing"]!["blockedBy"]!.AsArray().Select(one => one.Text()))));

    private static IEnumerable<string> Deferred(JsonNode said) => said["duties"]!.AsArray().Where(duty => duty!["state"].Text() == "deferred").Select(duty => duty!["kind"].Text());

    private static void LeaveOff(JsonNode node, string result, string because)
    {
        foreach (var section in (string[])["combustion", "gasSupply", "safetyDevices"])
            node.AsObject().Remove(section);
        node["ambientCo"]!.AsObject().Remove("runningPeakPpm");
        (node["work"] ??= new JsonObject())["result"] = result;
        (node["appliance"]!["stateOnLeaving"], node["appliance"]!["leftOffBecause"]) = ("turnedOff", because);
    }

    private static void SmallRepair(JsonNode node)
    {
        node["jobType"] = "repair";
        node["work"] = JsonNode.Parse("""{ "result": "carriedOut", "touched": ["waterSide"] }""");
        node["partsFitted"] = JsonNode.Parse("""[{ "partNumber": "P-1", "kind": "pump" }]""");
        foreach (var section in (string[])["combustion", "disturbedJoints", "tightnessTests", "heatExchanger", "burner"])
            node.AsObject().Remove(section);
    }

    private static void StatingAVisitBetween(JsonNode node)
    {
        SmallRepair(node);
        node["previousVisit"] = JsonNode.Parse("""{ "finishedAt": "2026-08-13T11:00:00+01:00" }""");
    }

    private static void LandlordCheck(JsonNode node)
    {
        node["jobType"] = "landlordCheck";
        node["premises"]!["use"] = "rented";
        node["work"] = JsonNode.Parse("""{ "result": "carriedOut", "touched": [] }""");
        (node["paperwork"]!["landlordName"], node["paperwork"]!["landlordAddress"]) = (true, true);
        foreach (var section in (string[])["combustion", "disturbedJoints", "partsFitted", "heatExchanger", "burner"])
            node.AsObject().Remove(section);
    }

    private static void NobodyIn(JsonNode node)
    {
        node["work"] = JsonNode.Parse("""{ "result": "noAccess", "tried": "rang twice", "leftBehind": "a card" }""");
        foreach (var section in (string[])["combustion", "disturbedJoints", "tightnessTests", "gasSupply", "partsFitted", "heatExchanger", "burner", "flue", "water", "condensate", "electrical", "ambientCo", "safetyDevices", "ventilation", "pipework", "coAlarm"])
            node.AsObject().Remove(section);
        node["appliance"]!.AsObject().Remove("stateOnLeaving");
    }

    /// <summary>The day from which something waits until the boiler is used again; null where nothing does. Of a list that begins a year later.</summary>
    private async Task<string?> WaitsFrom(string serial) => (await _client.GetJson("/v1/due?from=2027-10-01&to=2028-01-01"))["items"]!.AsArray()
        .SingleOrDefault(item => item!["kind"].Text() == "beforeUse" && item["serialNumber"]?.GetValue<string>() == serial)?["by"].Text();

    private async Task<JsonNode> Post(string serial, string id, string day, Action<JsonNode> change) => await (await _client.PostRecord(service.ExampleRecord.With(node =>
    {
        var moved = JsonNode.Parse(node.ToJsonString().Replace("2026-09-14", day, StringComparison.Ordinal))!.AsObject();
        node.AsObject().Clear();
        foreach (var (name, value) in moved)
            node[name] = value?.DeepClone();
        (node["recordId"], node["appliance"]!["serialNumber"]) = ($"{serial} {id}", serial);
        node.AsObject().Remove("previousVisit");
        change(node);
    }), "?include=all")).Read(HttpStatusCode.Created);
}
