using System.Data.Common;
using Checking;
using Jobs.Backfill;
using Jobs.Previews;
using Jobs.Queue;
using Jobs.Summary;
using Records.Many;
using Storage;
using Visits.Judging;

namespace Jobs.Workers;

/// <summary>Judges one chunk after the other. Any number of workers may run, in one process or in many.</summary>
public sealed class AuditWorker(
    ComplianceEngine engine, ProfileStore profiles, EvaluationStore evaluations, HistoryStore histories, WaitingChunks queue, ResultStore results, AuditFinish finish,
    Corrections corrections, PreviewWork previews, UnfinishedVisits unfinished, UnplacedLines unplaced, UnplacedVisits unplacedVisits, UnjournaledEntries unjournaled)
{
    /// <summary>Does what there is to do for one chunk; false when there was none; then what an older version left is seen to.</summary>
    /// <exception cref="DbException">The store does not answer; the chunk waits for the next try.</exception>
    public async Task<bool> RunOneAsync(CancellationToken cancel)
    {
        var chunk = await queue.TakeAsync(cancel);
        if (chunk is null)
        {
            // An audit that was left between its last chunk and its end.
            await finish.RunAsync(cancel);
            return await unjournaled.RunAsync(cancel) || await unplaced.RunAsync(cancel) || await unplacedVisits.RunAsync(cancel) || await unfinished.RunAsync(cancel);
        }

        if (chunk is { Attempts: > Chunk.MostAttempts, Lines.Count: > 1 })
            return await queue.SplitAsync(chunk, cancel);

        try
        {
            await (chunk.Kind == JobKinds.Preview ? previews.RunAsync(chunk, cancel) : WorkAsync(chunk, cancel));
        }
        catch
        {
            // Not the chunk's fault. When not even this can be said, its time will run out.
            await queue.ReleaseAsync(chunk, CancellationToken.None);
            throw;
        }

        await finish.RunAsync(cancel);
        return true;
    }

    private async Task WorkAsync(Chunk chunk, CancellationToken cancel)
    {
        var judge = new LineJudge(engine, profiles, evaluations, histories, chunk.Tenant, chunk.AuditStartedAt);
        var judged = chunk.Attempts > Chunk.MostAttempts ? [.. chunk.Lines.Select(GivenUp)] : await judge.JudgeAsync(chunk.Lines, cancel);

        var marked = await corrections.MarkAsync(chunk, judged, cancel);
        var sums = new SummaryBuilder(judge.LookedAtOn);
        foreach (var line in marked)
            sums.Add(line);
        await results.CompleteAsync(chunk, marked, sums.Parts, cancel);
    }

    private static JudgedLine GivenUp(RecordLine line) => LineJudge.Rejected(line, LineProblem.Internal(
        $"Whoever judged this record ended before it was done, {Chunk.MostAttempts} times in a row; it was not tried again. Nothing can be concluded about it."));
}
