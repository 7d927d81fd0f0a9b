using System.Globalization;
using System.Net;
using System.Text;
using Audits;

namespace ComplianceApi;

/// <summary>The summary of an audit as one page of HTML. It is made from the object that is served as JSON, and adds nothing to it.</summary>
internal static class AuditReport
{
    public static string Of(string title, AuditSummary summary)
    {
        var page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head><meta charset=\"utf-8\"><title>").Append(Safe(title)).Append("</title></head>\n<body>\n");
        page.Append("<h1>").Append(Safe(title)).Append("</h1>\n<ul>\n");
        foreach (var caution in summary.Cautions)
            page.Append("<li>").Append(Safe(caution)).Append("</li>\n");
        page.Append("</ul>\n");

        var (records, outcomes) = (summary.Records, summary.Outcomes);
        Table(page, "Records", ["read", "judged", "rejected", "unsafe", "incomplete", "advisory", "pass", "share without a gap", "deadlines seen from"],
            [[records.Read, records.Judged, records.Rejected, outcomes.Unsafe, outcomes.Incomplete, outcomes.Advisory, outcomes.Pass, summary.CompletenessRate, summary.LookedAtOn]], 1);
        Table(page, "Rules in force", ["rule set", "version", "content hash", "records"], summary.RuleSets.Select(set => new object?[] { set.Id, set.Version, set.ContentHash, set.Records }), summary.RuleSets.Count);
        Table(page, "Worst first", ["line", "record", "maker", "model", "serial number", "job may be closed", "unsafe", "failed rules", "missing", "advisory"],
            summary.WorstAppliances.Rows.Select(row => new object?[] { row.Line, row.RecordId, row.Maker, row.Model, row.SerialNumber, row.ClosingAllowed ? "yes" : "no", row.Counts.Unsafe, row.Counts.Error, row.Counts.Missing, row.Counts.Advisory }), summary.WorstAppliances.Total);
        Findings(page, "Findings by subject area", summary.Topics);
        Findings(page, "Findings by rule", summary.Rules);
        Records(page, "Records by engineer", summary.Engineers);
        Records(page, "Records by maker and model", summary.Models);
        Records(page, "Records by instrument", summary.Instruments);
        Due(page, "Overdue", summary.Overdue);
        Due(page, $"Due within {SummaryBuilder.SoonDays} days", summary.SoonDue);
        return page.Append("</body>\n</html>\n").ToString();
    }

    private static void Findings(StringBuilder page, string title, SummaryTable<FindingTally> table) => Table(page, title,
        ["", "unsafe", "failed rules", "missing", "advisory"],
        table.Rows.Select(row => new object?[] { row.Key, row.Counts.Unsafe, row.Counts.Error, row.Counts.Missing, row.Counts.Advisory }), table.Total);

    private static void Records(StringBuilder page, string title, SummaryTable<RecordTally> table) => Table(page, title,
        ["", "unsafe", "incomplete", "advisory", "pass"],
        table.Rows.Select(row => new object?[] { row.Key, row.Outcomes.Unsafe, row.Outcomes.Incomplete, row.Outcomes.Advisory, row.Outcomes.Pass }), table.Total);

    private static void Due(StringBuilder page, string title, SummaryTable<DueEntry> table) => Table(page, title,
        ["by", "what", "maker", "serial number", "line", "record", "rule"],
        table.Rows.Select(row => new object?[] { row.By, row.What, row.Maker, row.SerialNumber, row.Line, row.RecordId, row.RuleId }), table.Total);

    private static void Table(StringBuilder page, string title, string[] heads, IEnumerable<object?[]> rows, int total)
    {
        var shown = rows.ToList();
        page.Append("<h2>").Append(Safe(title)).Append("</h2>\n");
        if (total == 0)
        {
            page.Append("<p>None.</p>\n");
            return;
        }

        if (shown.Count < total)
            page.Append(CultureInfo.InvariantCulture, $"<p>{shown.Count} of {total} are shown.</p>\n");
        page.Append("<table border=\"1\">\n<tr>").AppendJoin("", heads.Select(head => $"<th scope=\"col\">{Safe(head)}</th>")).Append("</tr>\n");
        foreach (var row in shown)
            page.Append("<tr>").AppendJoin("", row.Select(cell => $"<td>{Safe(Text(cell))}</td>")).Append("</tr>\n");
        page.Append("</table>\n");
    }

    private static string Text(object? cell) => cell is DateOnly day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : Convert.ToString(cell, CultureInfo.InvariantCulture) ?? "";

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
