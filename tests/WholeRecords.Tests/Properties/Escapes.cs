using System.Text.Json.Nodes;
using MadeVisits;
using Records;
using Records.Members;
using Visits;
using Wire;

namespace WholeRecords.Tests.Properties;

/// <summary>The words by which a job might be got rid of: each a typed word or two, none of which changes what is so.</summary>
internal static class Escapes
{
    private static readonly IReadOnlyList<string> Reasons = WireNames.OfValues(typeof(NotDoneReason));

    /// <summary>What rules/reasons.json lists: there a reason can do something.</summary>
    private static readonly IReadOnlyList<(string Reason, string Place)> Listed =
    [
        .. JsonNode.Parse(File.ReadAllBytes(Path.Combine(WholeRecord.Folder, "..", "..", "..", "rules", "reasons.json")))!["rows"]!.AsArray()
            .SelectMany(row => row!["what"]!.AsArray().Select(what => ((string)row["because"]!, (string)what!))).Distinct(),
    ];

    // Of a boiler for which its maker would allow anything.
    private static readonly MakerLimits Loose = new()
    {
        CoCo2RatioMax = 0.05m,
        CoPpmMax = 5000,
        Co2PercentMin = 0,
        Co2PercentMax = 20,
        InletPressureMbarMin = 1,
        ElectrodeGapMmMin = 0,
        ElectrodeGapMmMax = 50,
        FlueTemperatureCMax = 1000,
        ServiceIntervalMonths = 120,
        SealsToRenew = [],
        Source = "an invented manual that allows anything",
    };

    /// <summary>Every word but the reasons.</summary>
    public static IEnumerable<Variant> Words(Base one)
    {
        foreach (var result in WireNames.OfValues(typeof(WorkResult)))
            yield return Set($"result {result}", "/work/result", result);
        foreach (var state in WireNames.OfValues(typeof(StateOnLeaving)))
            yield return Set($"left {state}", "/appliance/stateOnLeaving", state);
        yield return new Variant("touched: []", new Change("/work/touched", new JsonArray()));
        foreach (var because in WireNames.OfValues(typeof(LeftOffReason)))
            yield return Set($"left off because {because}", "/appliance/leftOffBecause", because);
        foreach (var (index, _) in (one.Record.PartsFitted ?? []).Index())
            yield return Set("part kind other", $"{JsonPlaces.Item("/partsFitted", index)}/kind", "other");
        foreach (var (index, defect) in (one.Record.Defects ?? []).Index().Where(item => !string.IsNullOrEmpty(item.Item.Subject)))
            foreach (var concern in WireNames.OfValues(typeof(DefectConcern)))
                yield return Set($"concerns {concern}", $"{JsonPlaces.Item("/defects", index)}/concerns", concern);
        foreach (var group in RecordMembers.Root.Where(member => member.IsSection))
            yield return new Variant("a group confirmed", new Change("/work/confirmed/-", new JsonObject { ["group"] = group.Name, ["listVersion"] = "1" })) { Words = $"group {group.Name} confirmed" };
        // Where it was "no", that was the observation: to turn it is no word beside a fact but another fact.
        if (one.Record.Electrical?.EarthOk != false)
            yield return new Variant("earthOk: true", new Change("/electrical/earthOk", true));
        yield return Set("open-vented", "/water/systemType", "openVented");
        yield return Set("owner-occupied", "/premises/use", "ownerOccupied");
        yield return new Variant("a looser profile", new Change("/appliance/profileId", "LOOSE"))
        {
            Lookup = new Lookup { ProfileId = "LOOSE", ProfileVersion = 1, ProfileLimits = Loose },
            Words = "a profile that allows anything",
        };
    }

    /// <summary>Each reason at every place of the record.</summary>
    public static IEnumerable<Variant> EveryReason(Base one) => EveryPlace(one).SelectMany(place => Reasons.Select(reason => ReasonAt(reason, place)));

    /// <summary>Each reason where the engine asks or found something bad, and every pair of reason and place that the table of reasons lists.</summary>
    public static IEnumerable<Variant> ReasonsThatMatter(Base one) =>
        PlacesThatMatter(one).SelectMany(place => Reasons.Select(reason => (reason, place)))
            .Concat(Listed.SelectMany(row => Places(one, row.Place).Select(place => (reason: row.Reason, place))))
            .Distinct().Select(pair => ReasonAt(pair.reason, pair.place));

    private static Variant ReasonAt(string reason, string place) =>
        new($"reason {reason}", new Change("/work/notDone/-", new JsonObject { ["what"] = place, ["because"] = reason })) { Words = $"{reason} at {place}" };

    /// <summary>Every place at which a reason could stand: each member of the record, and of each list the items that are there and the one behind.</summary>
    private static IEnumerable<string> EveryPlace(Base one) =>
        RecordMembers.All.Where(member => !member.Pattern.StartsWith("/work/", StringComparison.Ordinal)).SelectMany(member => Places(one, member.Pattern)).Distinct(StringComparer.Ordinal);

    /// <summary>Those of them that the engine asks for, or at which it found something bad.</summary>
    private static IEnumerable<string> PlacesThatMatter(Base one) =>
        one.Said.Missing.Select(item => item.Pointer).Concat(one.Said.Rows.Where(row => row.Outcome is Findings.Outcome.Unsafe or Findings.Outcome.Missing).Select(row => row.Subject))
            .Select(place => place.TrimStart('#')).Where(RecordMembers.IsPlace).Distinct(StringComparer.Ordinal);

    private static Variant Set(string kind, string pointer, string value) => new(kind, new Change(pointer, value));

    private static IEnumerable<string> Places(Base one, string pattern)
    {
        var star = pattern.IndexOf('*', StringComparison.Ordinal);
        if (star < 0)
            return [pattern];
        var count = one.Json.At(pattern[..(star - 1)]) is JsonArray items ? items.Count : 0;
        return Enumerable.Range(0, count + 1).SelectMany(index => Places(one, JsonPlaces.Item(pattern[..(star - 1)], index) + pattern[(star + 1)..]));
    }
}
