using System.Text.Json.Nodes;
using MadeVisits;

namespace WholeRecords.Tests.Properties;

/// <summary>Where a record shows what was worked on. From section 3 of the page of duties ("Touched", "Parts"), not from any rule.</summary>
internal static class WorkTraces
{
    private static readonly Dictionary<string, string[]> OfParts = new(StringComparer.Ordinal)
    {
        ["gasValve"] = ["gasPath", "electrics"],
        ["injector"] = ["gasPath"],
        ["gasSeal"] = ["gasPath"],
        ["regulator"] = ["gasPath"],
        ["meter"] = ["gasPath"],
        ["pipework"] = ["gasPath"],
        ["burner"] = ["combustionCircuit"],
        ["heatExchanger"] = ["combustionCircuit"],
        ["electrode"] = ["combustionCircuit"],
        ["combustionSeal"] = ["combustionCircuit"],
        ["fan"] = ["combustionCircuit", "electrics"],
        ["controlBoard"] = ["electrics"],
        ["pump"] = ["electrics"],
        ["sensor"] = ["electrics"],
        ["condensateTrap"] = ["condensatePath"],
        ["flueComponent"] = ["flue"],
        ["expansionVessel"] = ["waterSide"],
        ["reliefValve"] = ["waterSide"],
        ["waterPart"] = ["waterSide"],
    };

    private static readonly Dictionary<string, string> OfJoints = new(StringComparer.Ordinal)
    {
        ["gasValveInlet"] = "gasPath",
        ["gasValveOutlet"] = "gasPath",
        ["meterUnion"] = "gasPath",
        ["isolationValve"] = "gasPath",
        ["pipework"] = "gasPath",
        ["testNipple"] = "gasPath",
        ["burnerDoor"] = "combustionCircuit",
        ["topPlate"] = "combustionCircuit",
        ["fan"] = "combustionCircuit",
        ["electrode"] = "combustionCircuit",
        ["flueCollector"] = "combustionCircuit",
        ["condensateTrap"] = "condensatePath",
    };

    private static readonly (string Pointer, string Work)[] OfMembers =
    [
        ("/heatExchanger/cleaned", "combustionCircuit"), ("/heatExchanger/topPlateRemoved", "combustionCircuit"), ("/heatExchanger/method", "combustionCircuit"),
        ("/heatExchanger/minutesSpent", "combustionCircuit"), ("/condensate/trapCleaned", "condensatePath"), ("/water/filterCleaned", "waterSide"),
    ];

    /// <summary>Each place with the work that it shows; a place that shows two stands twice.</summary>
    public static IReadOnlyList<(string Pointer, string Work)> Of(JsonObject record) =>
    [
        .. OfMembers.Where(trace => record.At(trace.Pointer) is JsonValue value && !(value.TryGetValue<bool>(out var yes) && !yes)),
        .. Items(record, "/disturbedJoints", "place").Where(item => OfJoints.ContainsKey(item.Value)).Select(item => (item.Pointer, OfJoints[item.Value])),
        .. Items(record, "/partsFitted", "kind").SelectMany(item => OfParts.GetValueOrDefault(item.Value, []).Select(work => (item.Pointer, work))),
        .. (record.At("/work/touched") as JsonArray ?? []).Select((work, index) => (JsonPlaces.Item("/work/touched", index), (string)work!)),
    ];

    private static IEnumerable<(string Pointer, string Value)> Items(JsonObject record, string list, string member) =>
        (record.At(list) as JsonArray ?? []).Index().Where(item => item.Item![member] is not null).Select(item => ($"{JsonPlaces.Item(list, item.Index)}/{member}", (string)item.Item![member]!));
}
