using System.Runtime.CompilerServices;
using ServiceRecords;

namespace Audits;

/// <summary>Judges on all cores and answers in the order in which the records came.</summary>
public static class OrderedJudging
{
    private const int BatchForEachCore = 50;

    /// <summary>Yields what the judge says of each record. No more than one batch is held.</summary>
    public static async IAsyncEnumerable<JudgedLine> JudgeAllAsync(
        this LineJudge judge, IAsyncEnumerable<RecordLine> lines, [EnumeratorCancellation] CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(judge);
        await foreach (var batch in lines.Chunk(BatchForEachCore * Environment.ProcessorCount).WithCancellation(cancel))
        {
            var judged = new JudgedLine[batch.Length];
            await Parallel.ForAsync(0, batch.Length, cancel, async (index, stop) => judged[index] = await judge.JudgeAsync(batch[index], stop));
            foreach (var line in judged)
                yield return line;
        }
    }
}
