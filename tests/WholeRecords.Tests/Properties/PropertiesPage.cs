using System.Globalization;
using System.Text;
using WholeRecords.Tests.Made;

namespace WholeRecords.Tests.Properties;

/// <summary>The page that says where an engine does not keep the seven properties.</summary>
internal static class PropertiesPage
{
    public static string Of(PropertyRun run, PropertyRun made, MadeVisitFigures visits)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            # Where the rules of today do not keep the seven properties

            Made by `tests/rewrite properties`. The properties are those of section 6 of the page of duties; `tests/WholeRecords.Tests/Properties` asks them of any engine. Here they are asked of the rules of today, over every whole record that can be read, judged with nothing looked up. Counterexamples are told here and not mended; `properties.json` holds their numbers, which may only fall.

            Asked: how many variants of records the engine was asked about. Of removals and of moves towards danger one in {RunLength.Ordinary.OneIn} is tried; of escapes every word, every reason where the engine asks, where it found something bad or where `rules/reasons.json` has a row, and {RunLength.Ordinary.Pairs} pairs for each dangerous record; what is drawn is drawn by the names of record and place, so always the same. `tests/long/properties` tries all removals and moves, every reason at every place, and every pair of words or of a word and such a reason. That an unsafe record becomes incomplete and stays held when its bad value is taken away is no counterexample of 2a to 2c: no single record can show what it no longer says, which is why values that were sent are watched.

            Of {run.Bases.Records} records the rules let {run.Bases.Closed} close as they are.

            {Table(run)}

            """);
        Counterexamples(page, run, "");
        page.Append(CultureInfo.InvariantCulture, $"""

            ## The same of made visits

            {made.Bases.Records} records of made visits (`tests/MadeVisits`), truthful and not, each with what a store would know of the visits before, of which the rules let {made.Bases.Closed} close. Nobody has said what is expected of each, so only what needs no auditor is asked.

            {Table(made)}

            """);
        Counterexamples(page, made, "visits: ");
        return page.Append(visits.Section()).ToString();
    }

    private static string Table(PropertyRun run) => $"| claim | | asked | counterexamples |\n|---|---|---|---|\n{string.Join('\n', run.Claims.Select(claim => Row(run, claim)))}";

    private static void Counterexamples(StringBuilder page, PropertyRun run, string prefix)
    {
        foreach (var claim in run.Claims.Where(claim => run.Of(claim).Any()))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {prefix}{claim.Id}. {claim.Says}\n\n| kind | number | shortest example |\n|---|---|---|\n");
            foreach (var kind in run.Of(claim).GroupBy(one => one.Kind).OrderByDescending(kind => kind.Count()).ThenBy(kind => kind.Key, StringComparer.Ordinal))
                page.Append(CultureInfo.InvariantCulture, $"| {kind.Key} | {kind.Count()} | {Example(kind.First())} |\n");
        }
    }

    private static string Row(PropertyRun run, Claim claim) =>
        string.Create(CultureInfo.InvariantCulture, $"| {claim.Id} | {claim.Says} | {(run.Asked(claim) is > 0 and var asked ? asked.ToString(CultureInfo.InvariantCulture) : "not asked")} | {(run.Asked(claim) > 0 ? run.Of(claim).Count().ToString(CultureInfo.InvariantCulture) : "")} |");

    private static string Example(Counterexample one) => $"{one.Record}{(one.Changes.Length > 0 ? $": `{one.Changes}`" : "")} ({one.Said})";
}
