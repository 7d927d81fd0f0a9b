using System.Runtime.CompilerServices;
using Checking;
using Records.Many;
using Storage;

namespace Jobs.Queue;

/// <summary>Judges on all cores and answers in the order in which the records came.</summary>
public static class OrderedJudging
{
    private const int Batch = 25;

    /// <summary>Yields what the judge says of each record. No more than two batches for each core are held.</summary>
    public static async IAsyncEnumerable<JudgedLine> JudgeAllAsync(
        this LineJudge judge, IAsyncEnumerable<RecordLine> lines, [EnumeratorCancellation] CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(judge);
        await foreach (var batches in lines.Chunk(Batch).Chunk(2 * Environment.ProcessorCount).WithCancellation(cancel))
        {
            var judged = new IReadOnlyList<JudgedLine>[batches.Length];
            await Parallel.ForAsync(0, batches.Length, cancel, async (index, stop) => judged[index] = await judge.JudgeAsync(batches[index], stop));
            foreach (var line in judged.SelectMany(batch => batch))
                yield return line;
        }
    }
}
