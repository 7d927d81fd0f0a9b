using System.Globalization;
using System.Text.Json.Nodes;

namespace SecondOpinion.Tests.Records;

/// <summary>
/// Dangers (dangers.json) and what was done about them, one to three on a record: chance seldom draws a danger, the defect that answers it or
/// nearly does, how the boiler was left and what became of the escape together.
/// </summary>
internal static class Dangers
{
    private static readonly IReadOnlyList<JsonNode> All = [.. JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "dangers.json")))!.AsArray().Select(one => one!)];

    /// <summary>Where isolated; an empty word stands for nothing recorded.</summary>
    private static readonly string[] Isolated = ["applianceValve", "applianceValve", "pipeSection", "emergencyControl", "meter", "electricalSupply", "otherAppliances", "notIsolated", ""];

    private static readonly string[] Told = ["responsiblePerson", "owner", "landlordOrAgent", "otherOccupiers", "buildingManager", "transporter"];

    /// <summary>A danger by its topic and one of its places.</summary>
    public static (string Topic, string Place) Any(Dice dice)
    {
        var danger = dice.OneOf(All);
        return (danger["topic"]!.GetValue<string>(), dice.OneOf(danger["at"]!.AsArray().Select(at => at!.GetValue<string>()).ToList()));
    }

    /// <summary>Lays some dangers upon a draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="defect">Makes a defect by chance.</param>
    /// <param name="dice">What decides.</param>
    public static void LayUpon(Draft draft, Func<JsonObject> defect, Dice dice)
    {
        for (var left = dice.OneOf<int>([1, 1, 2, 3]); left > 0; left--)
        {
            var danger = dice.OneOf(All);
            foreach (var (pointer, value) in danger["set"]!.AsObject().Where(_ => dice.Chance(0.85)))
                draft.Apply(pointer, value);
            if (dice.Chance(0.9))
                draft.Apply(Invariant($"/defects/{(draft.At("/defects") as JsonArray)?.Count ?? 0}"), Answer(danger, defect(), draft.Day, dice));
        }

        SetOften(0.6, "/appliance/stateOnLeaving", ["turnedOff", "disconnected", "inUse", ""]);
        SetOften(0.15, "/appliance/sharedFlue", [true, true, false]);
        SetOften(0.15, "/work/result", ["noAccess", "noAccessToAppliance", "refused", "stoppedForDanger"]);
        SetOften(0.1, "/jobType", ["commissioning"]);
        SetOften(0.1, "/electrical/supplyOff", [true, false]);
        SetOften(0.1, "/tightnessTests", [new JsonArray()]);
        if (!dice.Chance(0.4))
            return;

        SetOften(0.6, "/escape/reported", [true, true, false]);
        SetOften(0.7, "/escape/gasIsolated", [true, true, false]);
        SetOften(0.7, "/escape/isolatedAt", [.. Isolated]);
        SetOften(0.7, "/escape/reference", ["E-7", ""]);
        SetOften(0.9, "/escape/told", [new JsonArray("responsiblePerson", "emergencyService"), new JsonArray("responsiblePerson"), new JsonArray("responsiblePerson"), new JsonArray()]);

        void SetOften(double probability, string pointer, IReadOnlyList<JsonNode> values)
        {
            if (dice.Chance(probability))
                draft.Apply(pointer, OrAbsent(dice.OneOf(values)));
        }
    }

    /// <summary>A defect that answers the danger by topic or by a place, mostly rightly; with something done about it.</summary>
    private static JsonObject Answer(JsonNode danger, JsonObject defect, DateOnly day, Dice dice)
    {
        if (dice.Chance(0.8))
            defect["topic"] = danger["topic"]!.DeepClone();
        SetOr(0.9, "subject", dice.Chance(0.55) ? dice.OneOf(danger["at"]!.AsArray().Select(at => at!.GetValue<string>()).ToList()) : null);
        SetOr(0.95, "class", dice.OneOf(["atRisk", "atRisk", "immediatelyDangerous", "immediatelyDangerous", "other"]));
        SetOr(0.95, "action", dice.OneOf(["rectified", "rectified", "turnedOff", "disconnected", "none"]));
        SetOr(0.9, "isolatedAt", dice.OneOf(Isolated));
        SetOr(0.8, "concerns", dice.OneOf(["", "", "", "", "thisAppliance", "otherAppliance", "supply"]));
        SetOr(0.7, "mechanism", dice.OneOf(["", "gasLeak", "incompleteCombustion", "productsNotRemoved", "other"]));
        SetOr(0.8, "foundAt", Moment(dice.OneOf(["", "09:05:00", "09:30:00", "10:12:00"])));
        SetOr(0.8, "reexaminedAt", Moment(dice.OneOf(["", "08:30:00", "09:20:00", "10:15:00", "10:25:00", "11:00:00"])));
        defect["told"] = new JsonArray([.. Enumerable.Range(0, dice.UpTo(4)).Select(_ => (JsonNode)dice.OneOf(Told))]);
        if (defect["action"] is null || defect["action"]!.GetValue<string>() == "none")
        {
            SetOr(0.8, "permission", "refused");
            SetOr(0.7, "emergencyReference", dice.OneOf(["E-7", ""]));
            SetOr(0.7, "userSigned", dice.Chance(0.5));
        }

        return defect;

        void SetOr(double probability, string name, JsonNode? value)
        {
            if (!dice.Chance(probability))
                return;
            if (OrAbsent(value) is { } given)
                defect[name] = given.DeepClone();
            else
                defect.Remove(name);
        }

        string Moment(string clock) => clock.Length == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd}T{clock}+01:00");
    }

    private static JsonNode? OrAbsent(JsonNode? value) => value is JsonValue text && text.TryGetValue<string>(out var word) && word.Length == 0 ? null : value;

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
