using System.Globalization;
using System.Text.Json.Nodes;
using MadeVisits;
using Records.Members;
using Visits;

namespace WholeRecords.Tests.Properties;

/// <summary>
/// 6. The same facts, said in another order or at another place, are the same. The order of members is not asked about: no engine sees it, for it judges what
/// was read. Groups are not either, until they have names.
/// </summary>
internal sealed class SameFactsProperty : IProperty
{
    public static readonly Claim OrderOfItems = new("6a", "Items of lists in another order: the same outcome, closing, rows and missing, at their new places.");
    public static readonly Claim Profile = new("6b", "The maker's limits by a stored profile, not by the record: the same.");
    public static readonly Claim Member = new("6c", "The gas volume in cubic feet, not in cubic metres: the same.");
    public static readonly Claim Earlier = new("6d", "What is known of the visits before in another order: the same.");

    /// <summary>Cubic metres in a cubic foot, exactly: 0.3048 m to the third (the international foot of 1959).</summary>
    private const decimal CubicFoot = 0.028316846592m;

    /// <summary>Members whose value is a pointer into the record.</summary>
    private static readonly HashSet<string?> PointsTo = ["/defects/*/subject", "/work/notDone/*/what", "/work/withdrawn/*/what"];

    public IReadOnlyList<Claim> Claims { get; } = [OrderOfItems, Profile, Member, Earlier];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        foreach (var (claim, json, lookup) in Forms(one))
        {
            asked(claim);
            var said = one.Judge(json, lookup);
            if (said is null || Differs(one, said, claim == OrderOfItems) is not { } what)
                continue;
            yield return Counterexample.Of(claim, what, one, new Variant(claim.Says.Split(':')[0]) { Words = claim.Says.Split(':')[0] }, said);
        }
    }

    private static IEnumerable<(Claim Claim, JsonObject Json, Lookup Lookup)> Forms(Base one)
    {
        yield return (OrderOfItems, Turned(one.Json), Lookup.None);
        if (one.Record.MakerLimits is { } limits)
            yield return (Profile, Without(one.Json, "/makerLimits"), new Lookup { ProfileId = "SAME", ProfileVersion = 1, ProfileLimits = limits });
        if (one.Record.GasSupply?.Rate is { VolumeM3: { } volume, VolumeFt3: null })
            yield return (Member, Without(one.Json, "/gasSupply/rate/volumeM3").Put("/gasSupply/rate/volumeFt3", decimal.Round(volume / CubicFoot, 12)), Lookup.None);
        if (one.Earlier.Count > 1)
            yield return (Earlier, one.Json, new Lookup { History = [.. one.Earlier.Reverse()] });
    }

    private static JsonObject Without(JsonObject json, string pointer) => json.DeepClone().AsObject().Drop(pointer);

    /// <summary>Every list back to front; what points to an item points to its new place.</summary>
    private static JsonObject Turned(JsonObject json)
    {
        var turned = (JsonObject)BackToFront(json)!;
        foreach (var pointer in JsonPlaces.Pointers(turned).Where(pointer => PointsTo.Contains(RecordMembers.Find(pointer)?.Pattern)).ToList())
            turned.Put(pointer, AtNewPlace(json, turned.At(pointer)!.GetValue<string>()));
        return turned;
    }

    private static JsonNode? BackToFront(JsonNode? node) => node switch
    {
        JsonObject section => new JsonObject(section.Select(member => KeyValuePair.Create(member.Key, BackToFront(member.Value)))),
        JsonArray items => new JsonArray([.. items.Reverse().Select(BackToFront)]),
        _ => node?.DeepClone(),
    };

    private static string? Differs(Base one, Answer said, bool isTurned)
    {
        var before = one.Said;
        if (said.Outcome != before.Outcome || said.MayClose != before.MayClose || said.ClosesAs != before.ClosesAs)
            return "another outcome or closing";
        var rows = before.Rows.Select(row => row with { Subject = Now(row.Subject) });
        if (Different(rows, said.Rows) is { Count: > 0 } other)
            return $"another row: {string.Join(", ", other.Select(row => row.RuleId).Distinct().Order(StringComparer.Ordinal).Take(3))}";
        return Different(before.Missing.Select(item => item with { Pointer = Now(item.Pointer) }), said.Missing) is { Count: > 0 } ? "another question" : null;

        string Now(string pointer) => isTurned ? AtNewPlace(one.Json, pointer) : pointer;
    }

    private static List<T> Different<T>(IEnumerable<T> before, IEnumerable<T> after)
    {
        var left = after.ToList();
        var gone = before.Where(item => !left.Remove(item)).ToList();
        return [.. gone, .. left];
    }

    /// <summary>Where the item stands once every list is back to front. An item behind the end of its list keeps its place: it is not there.</summary>
    private static string AtNewPlace(JsonObject json, string pointer)
    {
        var mark = pointer.StartsWith('#') ? "#" : "";
        var (from, to) = ("", "");
        foreach (var part in pointer[mark.Length..].Split('/').Skip(1))
        {
            var place = json.At(from) is JsonArray items && int.TryParse(part, CultureInfo.InvariantCulture, out var index) && index < items.Count ? items.Count - 1 - index : (int?)null;
            from = $"{from}/{part}";
            to = place is { } at ? JsonPlaces.Item(to, at) : $"{to}/{part}";
        }

        return mark + to;
    }
}
