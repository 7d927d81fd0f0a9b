using System.Globalization;
using CsvHelper;
using Jobs.Queue;
using Wording;

namespace ComplianceApi.Api.Audits;

/// <summary>Rows of findings for a spreadsheet. A text that it would run as a formula gets an apostrophe in front.</summary>
internal sealed class FindingCsv : IAsyncDisposable
{
    private readonly CsvWriter _csv;

    public FindingCsv(Stream stream)
    {
        _csv = CsvWriter.Create(stream, new CsvWriterOptions { Injection = CsvInjection.Escape }, leaveOpen: true);
        _csv.WriteRecord("line", "recordId", "maker", "model", "serialNumber", "engineer", "ruleId", "topic", "outcome", "subject", "message", "supersededBy", "recordOutcome", "premises", "visitedOn", "code");
    }

    public async Task WriteAsync(FindingRow row, CancellationToken cancel)
    {
        _csv.WriteField(row.Line, default, CultureInfo.InvariantCulture);
        foreach (var text in (ReadOnlySpan<string?>)[row.RecordId, row.Maker, row.Model, row.SerialNumber, row.Engineer, row.RuleId, row.Topic, row.Outcome, row.Subject, row.Message, row.SupersededBy?.ToString(CultureInfo.InvariantCulture) ?? "", row.RecordOutcome, row.Premises, row.VisitedOn is { } day ? Say.Iso(day) : "", row.Code])
            _csv.WriteField(text);
        await _csv.EndRecordAsync(cancel);
    }

    public async Task FlushAsync(CancellationToken cancel) => await _csv.FlushAsync(cancel);

    public async ValueTask DisposeAsync() => await _csv.DisposeAsync();
}
