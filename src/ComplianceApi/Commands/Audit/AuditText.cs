using ComplianceApi.Api.Questions;
using ComplianceApi.Commands.Terminal;
using Findings;
using Jobs.Summary;
using Storage;
using Wording;

namespace ComplianceApi.Commands.Audit;

/// <summary>An audit for a terminal: the dangerous records first, each with what to mind and to do, then what is open, then the tables.</summary>
internal sealed class AuditText(Sheet sheet, string name) : AuditPrinter
{
    private const int MostRecords = 5;
    private const int MostRows = 10;

    private readonly List<(UnsafeRecord Danger, Evaluation Evaluation)> _unsafe = [];
    private readonly List<AuditLine> _rejected = [];
    private readonly Dictionary<string, int> _asked = new(StringComparer.Ordinal);

    public override Task AddAsync(JudgedLine judged, CancellationToken stop)
    {
        var line = judged.Line;
        if (line.Problem is not null && _rejected.Count < MostRecords)
            _rejected.Add(line);
        if (_unsafe.Count < MostRecords && UnsafeRecord.Of(line, judged.Record) is { } danger)
            _unsafe.Add((danger, line.Evaluation!.Show(Include.Problems)));
        foreach (var question in (line.Evaluation?.Missing ?? []).Select(item => item.Ask).Distinct(StringComparer.Ordinal))
            _asked[question] = _asked.GetValueOrDefault(question) + 1;
        return Task.CompletedTask;
    }

    public override Task EndAsync(AuditSummary summary, CancellationToken stop)
    {
        var (records, outcomes) = (summary.Records, summary.Outcomes);
        sheet.Wrapped("", $"{name}: {Say.Of(records.Read, "record")}, deadlines seen from {Say.Day(summary.LookedAtOn)}");
        foreach (var (word, count, meaning) in new[]
        {
            ("unsafe", outcomes.Unsafe, OutcomeWords.Verdict(OverallOutcome.Unsafe)),
            ("incomplete", outcomes.Incomplete, OutcomeWords.Verdict(OverallOutcome.Incomplete)),
            ("advisory", outcomes.Advisory, OutcomeWords.Verdict(OverallOutcome.Advisory)),
            ("pass", outcomes.Pass, OutcomeWords.Verdict(OverallOutcome.Pass)),
            ("rejected", (int)records.Rejected, "The record cannot be used."),
        })
        {
            sheet.Wrapped($"{Say.Count(count),8}  {word.ToUpperInvariant(),-12}", meaning, headStyle: Sheet.StyleOf(count > 0 ? word : ""));
        }

        if (outcomes.Unsafe == 0)
        {
            sheet.Blank();
            sheet.Wrapped("", SummaryWords.NoDanger(summary));
        }

        if (records.Judged == 0 && SummaryWords.Fault(summary) is { } fault)
        {
            sheet.Wrapped("", $"The first fault: {fault}");
            sheet.Wrapped("", $"The service gives a template of the columns, as CSV, at {RecordTemplate.Path}.");
        }

        Unsafe(outcomes.Unsafe);
        if (_rejected.Count > 0)
        {
            Section("RECORDS THAT COULD NOT BE JUDGED", _rejected.Count, records.Rejected);
            foreach (var line in _rejected)
                Check.Refuse(sheet, line.RecordId is { } id ? $"Line {line.Line}, {id}," : $"Line {line.Line}", line.Problem!);
        }

        if (_asked.Count > 0)
        {
            Section("QUESTIONS LEFT OPEN MOST OFTEN", Math.Min(MostRows, _asked.Count), _asked.Count);
            foreach (var (question, count) in _asked.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key, StringComparer.Ordinal).Take(MostRows))
                sheet.Wrapped($"{Say.Count(count),6}  ", question);
        }

        Table("WORST FIRST", summary.WorstAppliances, [" line", "record", "premises", "visited", " unsafe", " missing", " advisory"], row =>
            [Say.Count(row.Line), row.RecordId, row.Premises ?? "", row.VisitedOn is { } day ? Say.Iso(day) : "", Say.Count(row.Counts.Unsafe), Say.Count(row.Counts.Missing + row.Counts.Error), Say.Count(row.Counts.Advisory)]);
        Table("FINDINGS BY RULE", summary.Rules, ["rule", " unsafe", " missing", " advisory"], row =>
            [row.Key, Say.Count(row.Counts.Unsafe), Say.Count(row.Counts.Missing + row.Counts.Error), Say.Count(row.Counts.Advisory)]);
        Table("RECORDS BY ENGINEER", summary.Engineers, ["licence number", " unsafe", " incomplete", " advisory", " pass"], row =>
            [row.Key, Say.Count(row.Outcomes.Unsafe), Say.Count(row.Outcomes.Incomplete), Say.Count(row.Outcomes.Advisory), Say.Count(row.Outcomes.Pass)]);
        Table("OVERDUE", summary.Overdue, ["by", "what", "serial number", "record"], DueRow);
        Table($"DUE WITHIN {SummaryBuilder.SoonDays} DAYS", summary.SoonDue, ["by", "what", "serial number", "record"], DueRow);

        sheet.Blank();
        sheet.Wrapped("", "Everything that was found: --format csv or ndjson; to print: --report.");
        sheet.Blank();
        sheet.Heading("CAUTIONS");
        foreach (var caution in summary.Cautions)
            sheet.Wrapped("  - ", caution);
        sheet.Blank();
        return Task.CompletedTask;
    }

    private void Unsafe(int total)
    {
        if (_unsafe.Count == 0)
            return;

        Section("ACT ON THESE", _unsafe.Count, total);
        foreach (var ((record, _), evaluation) in _unsafe)
        {
            sheet.Wrapped("", $"{SummaryWords.Visit(record)}. Line {Say.Count(record.Line)}, record {record.RecordId}. {OutcomeWords.Closing(evaluation.Closing)}", Sheet.StyleOf("pass"));
            foreach (var finding in evaluation.Findings.Where(finding => finding.Outcome == Outcome.Unsafe))
                EvaluationText.WriteFinding(sheet, finding, isBrief: true);
        }
    }

    private static string[] DueRow(DueEntry row) => [Say.Iso(row.By), row.What, row.SerialNumber ?? "", row.RecordId];

    private void Table<T>(string heading, SummaryTable<T> table, string[] heads, Func<T, IReadOnlyList<string>> row)
    {
        if (table.Total == 0)
            return;

        Section(heading, Math.Min(MostRows, table.Rows.Count), table.Total);
        sheet.Rows(heads, table.Rows.Take(MostRows).Select(row));
    }

    private void Section(string heading, int shown, long total)
    {
        sheet.Blank();
        sheet.Heading(shown < total ? $"{heading} ({Say.Count(shown)} of {Say.Count(total)})" : heading);
    }
}
