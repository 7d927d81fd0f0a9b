using System.Buffers;
using System.Text.Json.Serialization.Metadata;
using Audits;
using Findings;
using ServiceRecords;

namespace ComplianceApi;

/// <summary>Answers a short audit at once: one line of JSON for each record in the order in which they came, and the summary last.</summary>
internal sealed class AuditAnswer(FileStream spool, RecordFormat format, long read, IReadOnlyList<Replacement> replaced, LineJudge judge, Include include) : IResult
{
    /// <summary>Media type of the answer.</summary>
    public const string MediaType = "application/x-ndjson";

    private const int UnflushedBytes = 64 * 1024;

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        await using var records = spool;
        var cancel = httpContext.RequestAborted;
        var output = httpContext.Response.BodyWriter;
        httpContext.Response.ContentType = MediaType;
        var sums = new SummaryBuilder(judge.LookedAtOn);
        var replacing = Corrections.LinesOf(replaced);
        await foreach (var alone in judge.JudgeAllAsync(ManyRecords.ReadAsync(records, format, cancel), cancel))
        {
            var judged = Corrections.Mark(alone, replacing);
            sums.Add(judged);
            var shown = judged.Line with { Evaluation = judged.Line.Evaluation?.Show(include) };
            Write(shown, AuditJson.Default.AuditLine);
            if (output.UnflushedBytes > UnflushedBytes)
                await output.FlushAsync(cancel);
        }

        Write(new AuditEnd { Summary = sums.ToSummary(read) }, AuditJson.Default.AuditEnd);
        await output.FlushAsync(cancel);

        void Write<T>(T line, JsonTypeInfo<T> type)
        {
            WireJson.Write(output, line, type);
            output.Write("\n"u8);
        }
    }
}
