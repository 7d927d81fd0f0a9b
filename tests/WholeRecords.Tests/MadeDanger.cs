using System.Text.Json.Nodes;
using MadeVisits;

namespace WholeRecords.Tests;

/// <summary>A danger made by members of a record that has none, measured, seen or only stated.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Topic">Topic of the defect that records it.</param>
/// <param name="Subject">What that defect is about.</param>
/// <param name="IsImmediate">Whether immediately dangerous is expected, and not at risk.</param>
/// <param name="CutOffAt">Where it is isolated.</param>
/// <param name="Members">What shows it, as JSON by pointer; none where the defect alone states it.</param>
internal sealed record MadeDanger(string Name, string Topic, string Subject, bool IsImmediate, string CutOffAt, params IReadOnlyList<(string Pointer, string Value)> Members)
{
    private const string Boiler = "applianceValve";

    private static readonly MadeDanger[] OfAnyBoiler =
    [
        new("carbon monoxide in the room", "ambientAir", "/ambientCo/runningPeakPpm", true, Boiler, ("/ambientCo/runningPeakPpm", "38"), ("/ambientCo/afterPpm", "2")),
        new("ratio above the ceiling", "combustion", "/combustion/readings/0", false, Boiler, ("/combustion/readings/0/coPpm", "900")),
        new("leak", "tightness", "/tightnessTests/0", true, "emergencyControl", ("/tightnessTests/0/dropMbar", "1.4"), ("/tightnessTests/0/gasSmell", "true")),
        new("no earth", "electrical", "/electrical/earthOhm", false, "electricalSupply", ("/electrical/earthOhm", "400"), ("/electrical/earthOk", "false")),
        new("polarity reversed", "electrical", "/electrical/polarityOk", false, "electricalSupply", ("/electrical/polarityOk", "false")),
        new("flue not held", "flue", "/flue/supportsOk", false, Boiler, ("/flue/supportsOk", "false")),
        new("flue not sound", "flue", "/flue/visualOk", false, Boiler, ("/flue/visualOk", "false")),
        new("flame supervision failed", "safetyDevices", "/safetyDevices/0", true, Boiler, ("/safetyDevices/0/passed", "false")),
        new("joint of the combustion circuit torn", "joints", "/disturbedJoints/1", false, Boiler, [.. new[] { ("place", "\"burnerDoor\""), ("carriesGas", "false"), ("condition", "\"damaged\""), ("renewed", "false") }.Select(member => ($"/disturbedJoints/1/{member.Item1}", member.Item2))]),
        new("burnt wiring, stated", "electrical", "/electrical", false, "electricalSupply"),
        new("cracked exchanger, stated", "heatExchanger", "/heatExchanger", false, Boiler),
        new("chimney parted, stated", "flue", "/flue", true, Boiler),
    ];

    /// <summary>Of the room-sealed boiler.</summary>
    public static IReadOnlyList<MadeDanger> OfRoomSealed { get; } =
    [
        .. OfAnyBoiler,
        new("terminal under a window", "flue", "/flue/terminalClearances/0", false, Boiler, ("/flue/terminalClearances/0/distanceMm", "100")),
        new("case not tight under pressure", "flue", "/flue/caseSealOk", true, Boiler, ("/appliance/casePressure", "\"positive\""), ("/flue/caseSealOk", "false")),
        new("relief valve blocked", "water", "/water/reliefValve", false, Boiler, ("/water/reliefValve", "\"blocked\"")),
    ];

    /// <summary>Of the open-flued boiler.</summary>
    public static IReadOnlyList<MadeDanger> OfOpenFlued { get; } =
    [
        .. OfAnyBoiler,
        new("spillage", "flue", "/flue/spillageTestPassed", true, Boiler, ("/flue/spillageTestPassed", "false")),
        new("no draught", "flue", "/flue/flowTestPassed", false, Boiler, ("/flue/flowTestPassed", "false")),
        new("vent blocked", "ventilation", "/ventilation/airInletClear", false, Boiler, ("/ventilation/airInletClear", "false")),
        new("vent and feed shut", "water", "/water/ventAndFeedOpen", false, Boiler, ("/water/ventAndFeedOpen", "false")),
    ];

    public bool IsShown => Members.Count > 0;

    public bool IsEscape => Topic is "tightness" or "ambientAir";

    public bool IsLeak => Topic == "tightness";

    /// <summary>Fumes or gas come out, which no class takes from it.</summary>
    public bool ComesOut => Mechanism is "gasLeak" or "productsNotRemoved";

    private string Mechanism => Topic switch { "tightness" => "gasLeak", "electrical" or "water" => "other", _ => "productsNotRemoved" };

    /// <summary>
    /// Does a defect at this place speak of this danger? Products in the room come from somewhere; a flue that spills or does not draw, or a
    /// case that leaks, shows in the room; a flue that is not held is not sound.
    /// </summary>
    public bool IsRecordedAt(string at) => IsWithin(Subject, at) || IsWithin(at, Subject) || Subject switch
    {
        "/ambientCo/runningPeakPpm" => IsWithin(at, "/flue") || IsWithin(at, "/combustion") || IsWithin(at, "/ventilation"),
        "/flue/spillageTestPassed" or "/flue/flowTestPassed" => IsWithin(at, "/ambientCo") || at is "/flue/visualOk" or "/flue/spillageTestPassed" or "/flue/flowTestPassed",
        "/flue/visualOk" => IsWithin(at, "/flue"),
        "/flue/supportsOk" => at == "/flue/visualOk",
        "/flue/caseSealOk" => IsWithin(at, "/ambientCo"),
        _ => false,
    };

    private static bool IsWithin(string part, string whole) => $"{part}/".StartsWith($"{whole}/", StringComparison.Ordinal);

    /// <summary>Was there somebody to see or measure it: does the record have what it is a member of?</summary>
    public bool FitsIn(JsonObject record) => Members.All(member => record.At(member.Pointer[..member.Pointer.LastIndexOf('/')]) is not null);

    /// <summary>Shows the danger in the record.</summary>
    public void Show(JsonObject record)
    {
        foreach (var (pointer, value) in Members)
            record.Put(pointer, JsonNode.Parse(value));
    }

    /// <summary>The defect that records it, complete, with nothing done yet.</summary>
    public JsonObject Defect(string day) => new()
    {
        ["description"] = Name,
        ["location"] = "kitchen",
        ["topic"] = Topic,
        ["subject"] = Subject,
        ["class"] = IsImmediate ? "immediatelyDangerous" : "atRisk",
        ["cause"] = "wear",
        ["mechanism"] = Mechanism,
        ["foundAt"] = $"{day}T09:15:00+01:00",
        ["notifiedOn"] = day,
        ["told"] = new JsonArray("responsiblePerson", "owner"),
        ["userToldNotToUse"] = true,
        ["labelled"] = true,
        ["noticeNumber"] = $"N-{Name.Length * 37}",
        ["copyLeft"] = true,
        ["userSigned"] = true,
        ["reportable"] = new JsonObject { ["decision"] = "no", ["reason"] = "worn in use, none of the listed causes" },
    };
}
