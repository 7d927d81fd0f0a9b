using System.Globalization;
using System.Text.Json.Nodes;

namespace WholeRecords.Tests;

/// <summary>A change of one word of a record, by which somebody might talk a danger away (duties 6.7).</summary>
internal sealed record Change(string Name, Action<JsonNode> On)
{
    private static readonly string[] Results = ["carriedOut", "partlyCarriedOut", "noAccess", "noAccessToAppliance", "refused", "gasOff", "awaitingParts", "stoppedForDanger"];
    private static readonly string[] States = ["inUse", "turnedOff", "disconnected"];
    private static readonly string[] LeftOff = ["danger", "noGas", "awaitingParts", "customerWish", "void", "other"];
    private static readonly string[] Kinds = ["flueRelocation", "escape", "removal", "reconnection", "meterWork", "pipework", "diagnosis"];

    private static readonly string[] Reasons =
    [
        "noMeter", "meterNotReachable", "displayDead", "noTestPoint", "notFitted", "notReachable", "applianceCannotRun", "applianceLeftOff", "makerSaysNotNeeded",
        "customerRefused", "noInstrument", "unsafeToDo", "other",
    ];

    private static readonly string[] NotDone =
    [
        "/gasSupply/rate", "/gasSupply/applianceInletMbar", "/flue/visualOk", "/flue/spillageTestPassed", "/combustion/readings", "/safetyDevices/0/tested",
        "/heatExchanger/inspected", "/disturbedJoints/0/leakChecked", "/tightnessTests", "/defects/0/told",
    ];

    /// <summary>Every change that this record can bear.</summary>
    public static IReadOnlyList<Change> Of(JsonNode record) =>
    [
        .. Results.Select(result => new Change($"result {result}", one => Section(one, "work")["result"] = result)),
        .. Kinds.Select(kind => new Change($"kind {kind}", one => Section(one, "work")["kind"] = kind)),
        .. States.Select(state => new Change($"left {state}", one => one["appliance"]!["stateOnLeaving"] = state)),
        .. LeftOff.Select(because => new Change($"left off for {because}", one => one["appliance"]!["leftOffBecause"] = because)),
        .. Reasons.SelectMany(because => NotDone.Select(what => new Change($"{what} not done, {because}", one => AddReason(one, what, because)))),
        .. Enumerable.Range(0, Count(record, "partsFitted")).Select(place => new Change($"part {place} other", one => one["partsFitted"]![place]!["kind"] = "other")),
        .. Enumerable.Range(0, Count(record, "defects")).SelectMany(place => new[] { "thisAppliance", "otherAppliance", "supply" }
            .Select(concerns => new Change($"defect {place} concerns {concerns}", one => one["defects"]![place]!["concerns"] = concerns))),
        new("nothing touched", one => Section(one, "work")["touched"] = new JsonArray()),
        new("no gas joint opened", one => Section(one, "work")["noGasJointOpened"] = true),
        new("earth ticked as good", one => Section(one, "electrical")["earthOk"] = true),
        new("open-vented", one => Section(one, "water")["systemType"] = "openVented"),
        new("owner-occupied", one => Section(one, "premises")["use"] = "ownerOccupied"),
        new("not condensing", one => one["appliance"]!["condensing"] = false),
    ];

    /// <summary>Pointers of all members and items.</summary>
    public static IEnumerable<string> Pointers(JsonNode node, string at = "") => node switch
    {
        JsonObject section => section.Where(member => member.Value is not null).SelectMany(member => Pointers(member.Value!, $"{at}/{member.Key}").Prepend($"{at}/{member.Key}")),
        JsonArray list => list.Index().SelectMany(item => Pointers(item.Item!, $"{at}/{item.Index}").Prepend($"{at}/{item.Index}")),
        _ => [],
    };

    /// <summary>The same record without one member or item.</summary>
    public static JsonNode Without(JsonNode record, string pointer)
    {
        var (without, steps) = (record.DeepClone(), pointer.Split('/')[1..]);
        var here = steps[..^1].Aggregate(without, (node, step) => node is JsonArray list ? list[int.Parse(step, CultureInfo.InvariantCulture)]! : node[step]!);
        if (here is JsonArray items)
            items.RemoveAt(int.Parse(steps[^1], CultureInfo.InvariantCulture));
        else
            here.AsObject().Remove(steps[^1]);
        return without;
    }

    private static JsonNode Section(JsonNode record, string name) => record[name] ??= new JsonObject();

    private static int Count(JsonNode record, string list) => (record[list] as JsonArray)?.Count ?? 0;

    private static void AddReason(JsonNode record, string what, string because) =>
        ((JsonArray)(Section(record, "work")["notDone"] ??= new JsonArray())).Add((JsonNode)new JsonObject { ["what"] = what, ["because"] = because });
}
