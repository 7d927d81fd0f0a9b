using System.Globalization;
using System.Text;

namespace WholeRecords.Tests;

/// <summary>The page that says how far a second person agrees with what the auditor expects of the whole records.</summary>
internal static class OpinionPage
{
    public static string Of(IReadOnlyList<SecondlyJudged> all)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            # What a second person makes of the whole records

            Made by `tests/rewrite`. `src/SecondOpinion/Duties` judges each record by hand, from the page of duties and the law, by somebody who has not read the rules; its answer is held against what the auditor expects, who had not read them either: outcome, closing, as what it closes, what must be asked and what must not, and where the record says so the state of the worst danger and whether all of it is handled. Accepted values count. Of a boiler that was never reached and whose gas is not told, mains gas is taken. How the two came together: [QUESTIONS.md](QUESTIONS.md), "What a second opinion changed". Agreement of two readers of one page proves the reading, not the page.

            | records | number | read | agree |
            |---|---|---|---|
            {Row("all", all)}
            {Row("honest", all.Where(one => one.Whole.IsHonest))}
            {Row("not honest", all.Where(one => !one.Whole.IsHonest))}
            {string.Join('\n', Rows(all, one => one.Whole.Job))}
            {string.Join('\n', Rows(all, one => $"danger: {one.Whole.Danger}"))}

            ## Differences


            """);
        var different = all.Where(one => one.Differences.Count > 0).ToList();
        foreach (var one in different)
            page.Append(CultureInfo.InvariantCulture, $"- {one.Whole.Name}: {string.Join("; ", one.Differences)}\n");
        page.Append(different.Count == 0 ? "None.\n" : "").Append("""

            ## Members without which a held record would close

            One member or item left out of each record that is held. What was volunteered, and what contradicts something else, can be left out by whoever knows the answer; the rule on withdrawn values is there for that. The list is to become shorter.

            | left out | class | records |
            |---|---|---|

            """);
        foreach (var (member, its, records) in OpinionSilence.ClosesWithout)
            page.Append(CultureInfo.InvariantCulture, $"| `{member}` | {its} | {string.Join(", ", records)} |\n");
        page.Append("\n## Not read\n\n");
        page.Append(string.Join(", ", all.Where(one => one.Said is null).Select(one => one.Whole.Name).DefaultIfEmpty("None."))).Append('\n');
        return page.ToString();
    }

    private static IEnumerable<string> Rows(IReadOnlyList<SecondlyJudged> all, Func<SecondlyJudged, string> by) =>
        all.GroupBy(by).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => Row(group.Key, group));

    private static string Row(string name, IEnumerable<SecondlyJudged> some)
    {
        var list = some.ToList();
        var read = list.Where(one => one.Said is not null).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"| {name} | {list.Count} | {read.Count} | {read.Count(one => one.Differences.Count == 0)} |");
    }
}
