using System.Text.Json;
using ComplianceApi.Api.Audits;
using ComplianceApi.Commands.Terminal;
using ComplianceApi.Problems;
using Findings;
using Jobs.Queue;
using Jobs.Summary;
using Storage;

namespace ComplianceApi.Commands.Audit;

/// <summary>Prints an audit as it goes on, in one of its formats.</summary>
internal abstract class AuditPrinter : IAsyncDisposable
{
    public static AuditPrinter For(AuditFormat format, string name, TextWriter output) => format switch
    {
        AuditFormat.Json => new SummaryPrinter(output),
        AuditFormat.Ndjson => new JsonLines(Console.OpenStandardOutput()),
        AuditFormat.Csv => new CsvRows(Console.OpenStandardOutput()),
        AuditFormat.Junit => new JunitPrinter(Console.OpenStandardOutput(), name),
        _ => new AuditText(new Sheet(output), name),
    };

    /// <summary>One record, in the order in which they came.</summary>
    public virtual Task AddAsync(JudgedLine judged, CancellationToken stop) => Task.CompletedTask;

    /// <summary>All of them.</summary>
    public abstract Task EndAsync(AuditSummary summary, CancellationToken stop);

    /// <inheritdoc />
    public async ValueTask DisposeAsync() => await CloseAsync();

    protected virtual Task CloseAsync() => Task.CompletedTask;
}

/// <summary>The summary as the service serves it.</summary>
internal sealed class SummaryPrinter(TextWriter output) : AuditPrinter
{
    public override Task EndAsync(AuditSummary summary, CancellationToken stop) =>
        output.WriteLineAsync(JsonSerializer.Serialize(summary, AuditJson.Wire.AuditSummary));
}

/// <summary>The lines with which the service answers an audit at once.</summary>
internal sealed class JsonLines(Stream output) : AuditPrinter
{
    public override Task AddAsync(JudgedLine judged, CancellationToken stop) => WriteAsync(output, judged, stop);

    public override Task EndAsync(AuditSummary summary, CancellationToken stop) =>
        WriteAsync(output, JsonSerializer.SerializeToUtf8Bytes(new AuditEnd { Summary = summary }, AuditJson.Wire.AuditEnd), stop);

    public static Task WriteAsync(Stream output, JudgedLine judged, CancellationToken stop)
    {
        var shown = judged.Line.Addressed() with { Evaluation = judged.Line.Evaluation?.Show(Include.Problems) };
        return WriteAsync(output, WireJson.ToBytes(shown, AuditJson.Default.AuditLine), stop);
    }

    private static async Task WriteAsync(Stream output, byte[] line, CancellationToken stop)
    {
        await output.WriteAsync((byte[])[.. line, (byte)'\n'], stop);
    }
}

/// <summary>The rows of findings as the service serves them.</summary>
internal sealed class CsvRows(Stream output) : AuditPrinter
{
    private readonly FindingCsv _csv = new(output);

    public override async Task AddAsync(JudgedLine judged, CancellationToken stop)
    {
        foreach (var row in FindingRows.Of(judged))
            await _csv.WriteAsync(row, stop);
    }

    public override Task EndAsync(AuditSummary summary, CancellationToken stop) => _csv.FlushAsync(stop);

    protected override async Task CloseAsync() => await _csv.DisposeAsync();
}
