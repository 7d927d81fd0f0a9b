using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Records.Members;
using Records.Reading;
using Records.Values;

namespace Records.Tests;

/// <summary>Bodies to read: the example record, one with every member, and either of them changed at some place.</summary>
internal static class Bodies
{
    public static string Example { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "example-record.json"));

    private static readonly string[] Jurisdictions = ["GB-ENG", "GB-SCT", "GB-WLS"];

    /// <summary>A record that has every member once, made from the metadata: the middle of each range, the first of each enumeration.</summary>
    public static string Full { get; } = FullSection(RecordMembers.Root).ToJsonString();

    public static ReadResult Read(string json) => RecordReader.Read(Encoding.UTF8.GetBytes(json), Jurisdictions);

    /// <summary>The example with raw JSON (which may be wrong JSON) at a place; a new member where the place is not there.</summary>
    public static string With(string place, string rawJson) => With(Example, place, rawJson);

    public static string With(string body, string place, string rawJson)
    {
        const string mark = "@@raw@@";
        var root = JsonNode.Parse(body)!;
        var parts = place.Split('/')[1..];
        var node = parts[..^1].Aggregate(root, (n, part) => n is JsonArray list ? list[Index(part)]! : n[part]!);
        if (node is JsonArray array)
        {
            array[Index(parts[^1])] = mark;
        }
        else
        {
            node[parts[^1]] = mark;
        }

        return root.ToJsonString().Replace($"\"{mark}\"", rawJson, StringComparison.Ordinal);
    }

    private static int Index(string part) => int.Parse(part, CultureInfo.InvariantCulture);

    private static JsonObject FullSection(IEnumerable<RecordMember> members) =>
        new(members.Where(m => m.Name != "volumeFt3").Select(m => KeyValuePair.Create(m.Name, m.IsList ? new JsonArray(FullValue(m)) : FullValue(m))));

    private static JsonNode? FullValue(RecordMember member) => member switch
    {
        { IsSection: true } => FullSection(member.Members),
        { Pattern: "/defects/*/subject" or "/work/notDone/*/what" or "/work/withdrawn/*/what" } => "/flue",
        { Pattern: "/jurisdiction" } => Jurisdictions[0],
        { Pattern: "/previousVisit/finishedAt" } => "2025-09-14T10:25:00Z",
        { AllowedValues: [var first, ..] } => first,
        { Unit: not null } => (member.Minimum + member.Maximum) / 2,
        _ when member.ClrType == typeof(bool) => true,
        _ when member.ClrType == typeof(DateOnly) => "2026-09-14",
        _ when member.ClrType == typeof(Timestamp) => "2026-09-14T10:25:00.50+01:00",
        _ => "x",
    };
}
