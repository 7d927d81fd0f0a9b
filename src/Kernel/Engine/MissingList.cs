using Findings;

namespace Kernel.Engine;

/// <summary>
/// What a record lacks, as questions in the order in which they can be answered: what needs the appliance running, what needs access,
/// what can be seen on site, paper; within each as the record is laid out.
/// </summary>
internal static class MissingList
{
    public static IReadOnlyList<MissingItem> Of(IEnumerable<(string Pointer, RuleInfo Rule)> asked, JudgedVisit visit) =>
    [
        .. asked
            .GroupBy(item => item.Pointer, item => item.Rule, StringComparer.Ordinal)
            .Select(group => (Pointer: group.Key, Question: visit.Model.QuestionAt(group.Key), Rules: group))
            .OrderBy(item => item.Question.Place)
            .ThenBy(item => item.Pointer, PointerOrder.Instance)
            .Select(item => new MissingItem
            {
                Pointer = item.Pointer,
                Ask = item.Question.Ask,
                WhileOnSite = item.Question.WhileOnSite,
                Because = [.. item.Rules.SelectMany(rule => DutyList.CausesOf(visit.Owed, rule)).Distinct(StringComparer.Ordinal)],
                NeededBy = [.. item.Rules.Select(rule => rule.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            }),
    ];
}
