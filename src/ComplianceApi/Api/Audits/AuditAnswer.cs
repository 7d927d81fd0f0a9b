using System.Buffers;
using System.Text.Json.Serialization.Metadata;
using Checking;
using Findings;
using Jobs.Queue;
using Jobs.Summary;
using Records.Many;

namespace ComplianceApi.Api.Audits;

/// <summary>
/// The answer of a short audit: one line of JSON for each record in the order in which they came, and the summary last. All of it is laid
/// aside before any of it is sent, so that one that is too long can still be refused: no part of it ever looks like the whole.
/// </summary>
internal static class AuditAnswer
{
    /// <summary>Most bytes of an answer: 64 MiB.</summary>
    public const long MostBytes = 64 * 1024 * 1024;

    private const int PartBytes = 64 * 1024;

    /// <summary>Judges the records and writes the answer; null where it would have more than <see cref="MostBytes"/>.</summary>
    /// <exception cref="NoRoomException">It cannot be laid aside.</exception>
    public static async Task<FileStream?> WriteAsync(
        IAsyncEnumerable<RecordLine> records, long read, IReadOnlyList<Replacement> replaced, LineJudge judge, Include include, CancellationToken cancel)
    {
        var file = Spool.Create();
        try
        {
            var part = new ArrayBufferWriter<byte>(2 * PartBytes);
            var sums = new SummaryBuilder(judge.LookedAtOn);
            var replacing = Corrections.LinesOf(replaced);
            await foreach (var alone in judge.JudgeAllAsync(records, cancel))
            {
                var judged = Corrections.Mark(alone, replacing);
                sums.Add(judged);
                Write(part, judged.Line.Shown(include), AuditLineView.TypeFor(include));
                if (file.Position + part.WrittenCount > MostBytes)
                {
                    await file.DisposeAsync();
                    return null;
                }

                if (part.WrittenCount > PartBytes)
                    await FlushAsync();
            }

            Write(part, new AuditEnd { Summary = sums.ToSummary(read, judge.Cautions) }, AuditJson.Default.AuditEnd);
            await FlushAsync();
            file.Position = 0;
            return file;

            async Task FlushAsync()
            {
                await Spool.WriteAsync(file, part.WrittenMemory, cancel);
                part.ResetWrittenCount();
            }
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }
    }

    private static void Write<T>(ArrayBufferWriter<byte> output, T line, JsonTypeInfo<T> type)
    {
        WireJson.Write(output, line, type);
        output.Write("\n"u8);
    }
}
