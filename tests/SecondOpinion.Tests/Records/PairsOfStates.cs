using System.Text.Json.Nodes;
using Records.Members;

namespace SecondOpinion.Tests.Records;

/// <summary>
/// Which pairs of states of two members met in some record. A state is a value of a yes/no or of a choice, or the absence of any member;
/// of a member of list items, a state that some item has.
/// </summary>
internal sealed class PairsOfStates
{
    // Why a record replaces another is asked before it is judged; no rule reads it.
    private static readonly IReadOnlyList<RecordMember> Members =
        [.. RecordMembers.All.Where(member => !member.IsSection && !member.Pattern.StartsWith("/supersedesBecause/", StringComparison.Ordinal))];
    private static readonly Dictionary<(RecordMember Member, string? State), int> States = Members
        .SelectMany(member => StatesOf(member).Select(state => (member, state)))
        .Index()
        .ToDictionary(place => place.Item, place => place.Index);

    private readonly ulong[][] _met = [.. States.Select(_ => new ulong[(States.Count + 63) / 64])];
    private readonly Lock _gate = new();

    /// <summary>Pairs that can meet: states of two different members.</summary>
    public static int Possible => Pairs.Count();

    private static IEnumerable<((RecordMember Member, string? State) One, (RecordMember Member, string? State) Other)> Pairs =>
        States.Keys.SelectMany((one, index) => States.Keys.Take(index).Where(other => other.Member != one.Member).Select(other => (one, other)));

    /// <summary>The pairs that no record had.</summary>
    public IEnumerable<string> NeverMet => Pairs
        .Where(pair => (_met[States[pair.One]][States[pair.Other] / 64] >> (States[pair.Other] % 64) & 1) == 0)
        .Select(pair => $"{Shown(pair.One)} with {Shown(pair.Other)}");

    /// <summary>Notes the states of a record.</summary>
    public void Note(JsonObject record)
    {
        var here = Members.SelectMany(member => StatesIn(record, member)).ToList();
        var mask = new ulong[_met[0].Length];
        foreach (var state in here)
            mask[state / 64] |= 1UL << (state % 64);

        lock (_gate)
        {
            foreach (var row in here.Select(state => _met[state]))
            {
                for (var i = 0; i < mask.Length; i++)
                    row[i] |= mask[i];
            }
        }
    }

    private static IEnumerable<string?> StatesOf(RecordMember member)
    {
        IEnumerable<string?> values = member.ClrType == typeof(bool) ? ["true", "false"] : Records.States.ValuesOf(member);
        return Records.States.IsAlwaysThere(member) ? values : values.Append(null);
    }

    private static IEnumerable<int> StatesIn(JsonObject record, RecordMember member)
    {
        IEnumerable<JsonNode?> nodes = [record];
        foreach (var part in member.Pattern.Split('/')[1..])
            nodes = part == "*" ? nodes.SelectMany(node => node as JsonArray ?? []) : nodes.Select(node => (node as JsonObject)?[part]);

        var states = nodes.SelectMany(node => node is JsonArray items ? items.Select(item => item?.ToString()) : [Text(node)]).Distinct(StringComparer.Ordinal).ToList();
        return (states.Count == 0 ? [null] : states)
            .Select(state => States.TryGetValue((member, state), out var index) ? index : -1)
            .Where(index => index >= 0);
    }

    private static string? Text(JsonNode? node) => node is JsonValue value ? value.ToJsonString().Trim('"') : null;

    private static string Shown((RecordMember Member, string? State) one) => $"{one.Member.Pattern} {one.State ?? "absent"}";
}
