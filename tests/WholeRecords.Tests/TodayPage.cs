using System.Globalization;
using System.Text;

namespace WholeRecords.Tests;

/// <summary>The page that says how far the rules of today are from what the auditor expects of the whole records.</summary>
internal static class TodayPage
{
    public static string Of(IReadOnlyList<Judged> all)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            # What the rules of today make of the whole records

            Made by `tests/rewrite`. Each record is read, looked up in an empty store and judged as `check` does; then its outcome and whether the job may be closed are held against what the record expects (accepted values count), and where the record expects a danger, its state, whether it is handled and what is open (situation). `closesAs` and `asks` are not compared here.

            ## How many come out as expected

            | records | number | refused | outcome | closing | both | situation |
            |---|---|---|---|---|---|---|
            {Row("all", all)}
            {Row("honest", all.Where(one => one.Whole.IsHonest))}
            {Row("not honest", all.Where(one => !one.Whole.IsHonest))}
            {string.Join('\n', Rows(all, one => one.Whole.Job))}
            {string.Join('\n', Rows(all, one => $"danger: {one.Whole.Danger}"))}

            ## Looser than the auditor


            """);
        Differences(page, all.Where(IsLooser), "None.");
        page.Append("## Stricter than the auditor, or otherwise\n\n");
        Differences(page, all.Where(one => !IsLooser(one) && one.Outcome is not null && !(one.HasOutcomeWanted && one.HasClosingWanted)), "None.");
        page.Append("## Situation seen otherwise\n\n");
        page.Append(string.Join(", ", all.Where(one => one.Outcome is not null && !one.HasSituationWanted).Select(one => one.Whole.Name).DefaultIfEmpty("None."))).Append("\n\n");
        page.Append("## Refused\n\n");
        page.Append(string.Join(", ", all.Where(one => one.Outcome is null).Select(one => one.Whole.Name).DefaultIfEmpty("None."))).Append('\n');
        return page.ToString();
    }

    /// <summary>What an auditor would mind most: a job that may be closed and should be held, or a danger that is not called one.</summary>
    public static bool IsLooser(Judged one) =>
        (one.MayClose == true && !one.HasClosingWanted) || (one.Outcome is not null and not "unsafe" && !one.HasOutcomeWanted && one.Whole.Outcome == "unsafe");

    private static IEnumerable<string> Rows(IReadOnlyList<Judged> all, Func<Judged, string> by) => all.GroupBy(by).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => Row(group.Key, group));

    private static string Row(string name, IEnumerable<Judged> some)
    {
        var list = some.ToList();
        return string.Create(CultureInfo.InvariantCulture, $"| {name} | {list.Count} | {list.Count(one => one.Outcome is null)} | {list.Count(one => one.HasOutcomeWanted)} | {list.Count(one => one.HasClosingWanted)} | {list.Count(one => one.HasOutcomeWanted && one.HasClosingWanted)} | {list.Count(one => one.Whole.State is not null && one.HasSituationWanted)} of {list.Count(one => one.Whole.State is not null)} |");
    }

    private static void Differences(StringBuilder page, IEnumerable<Judged> some, string none)
    {
        var groups = some.GroupBy(one => $"{Said(one.Whole.Outcome, one.Whole.MayClose)} wanted, {Said(one.Outcome!, one.MayClose!.Value)} said").OrderBy(group => group.Key, StringComparer.Ordinal).ToList();
        foreach (var group in groups)
            page.Append(CultureInfo.InvariantCulture, $"**{group.Key}** ({group.Count()}): {string.Join(", ", group.Select(one => one.Whole.Name))}\n\n");
        if (groups.Count == 0)
            page.Append(none).Append("\n\n");
    }

    private static string Said(string outcome, bool mayClose) => $"{outcome} and {(mayClose ? "closed" : "held")}";
}
