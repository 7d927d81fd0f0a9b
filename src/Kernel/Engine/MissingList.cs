using Findings;

namespace Kernel.Engine;

/// <summary>
/// What a record lacks, as questions in the order in which they can be answered: what needs the appliance running, what needs access,
/// what can be seen on site, paper; within each as the record is laid out.
/// </summary>
internal static class MissingList
{
    public static IReadOnlyList<MissingItem> Of(IEnumerable<(string Pointer, string RuleId)> asked, IRecordModel model) =>
    [
        .. asked
            .GroupBy(item => item.Pointer, item => item.RuleId, StringComparer.Ordinal)
            .Select(group => (Pointer: group.Key, Question: model.QuestionAt(group.Key), Rules: group))
            .OrderBy(item => item.Question.Place)
            .ThenBy(item => item.Pointer, PointerOrder.Instance)
            .Select(item => new MissingItem
            {
                Pointer = item.Pointer,
                Ask = item.Question.Ask,
                WhileOnSite = item.Question.WhileOnSite,
                NeededBy = [.. item.Rules.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            }),
    ];
}
