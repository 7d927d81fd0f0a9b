using Findings;
using Records.Members;
using Records.Metadata;

namespace RuleEngine;

/// <summary>
/// What a record lacks, as questions in the order in which they can be answered: what needs the appliance running, what needs access,
/// what can be seen on site, paper; within each as the record is laid out.
/// </summary>
internal static class MissingList
{
    private static readonly Dictionary<string, int> PlaceInRecord =
        RecordMembers.All.Select((member, index) => (member.Pattern, index)).ToDictionary(StringComparer.Ordinal);

    public static IReadOnlyList<MissingItem> Of(IEnumerable<(string Pointer, string RuleId)> asked) =>
    [
        .. asked
            .GroupBy(item => item.Pointer, item => item.RuleId, StringComparer.Ordinal)
            .Select(group => (Pointer: group.Key, Member: RecordMembers.Find(group.Key)!, Rules: group))
            .OrderBy(item => item.Member.While)
            .ThenBy(item => PlaceInRecord[item.Member.Pattern])
            .ThenBy(item => item.Pointer, PointerOrder.Instance)
            .Select(item => new MissingItem
            {
                Pointer = item.Pointer,
                Ask = item.Member.Ask,
                WhileOnSite = item.Member.While != While.Paper,
                NeededBy = [.. item.Rules.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            }),
    ];

    private static Dictionary<string, int> ToDictionary(this IEnumerable<(string, int)> pairs, StringComparer comparer) =>
        pairs.ToDictionary(pair => pair.Item1, pair => pair.Item2, comparer);
}
