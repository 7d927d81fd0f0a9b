using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Audits;
using Findings;
using RuleEngine;
using RuleModel;
using ServiceRecords;

namespace Benchmarks;

/// <summary>How the time of a record grows with the rules, and that of an audit and its memory with the records.</summary>
internal static class Growth
{
    private const int Rounds = 12;

    public static int Rules()
    {
        var types = new List<Type> { typeof(Copy<object>) };
        while (types.Count < 480)
            types.Add(typeof(Copy<>).MakeGenericType(types[^1].GetGenericArguments()[0] == typeof(object) ? typeof(List<object>) : typeof(List<>).MakeGenericType(types[^1].GetGenericArguments()[0])));

        var all = new List<Timed>();
        foreach (var count in (int[])[30, 60, 120, 240, 480])
        {
            var rules = new CompiledRules(types.Take(count).Select(type => (FirstPassRule)Activator.CreateInstance(type)!).ToList());
            all.Add(new Timed($"{count} rules of one kind", i => rules.Run([new Visit(Month.Records[i], Month.Catalogue.Limits)])));
        }

        Timed.InTurns(Rounds, all);
        Timed.Print(all);
        return 0;
    }

    /// <summary>Audits of growing length beside a loop that only reads and writes the same lines.</summary>
    public static async Task<int> RecordsAsync()
    {
        Console.WriteLine("records   audit/s    echo/s   audit/echo   peak managed MB over idle");
        foreach (var count in (int[])[1_000, 10_000, 100_000])
        {
            var idle = GC.GetTotalMemory(forceFullCollection: true);
            var echo = await RateAsync(count, EchoAsync);
            var peak = 0L;
            var audit = await RateAsync(count, async lines =>
            {
                await foreach (var judged in new LineJudge(Month.Engine, null!, null!, Tenant.Local, TimeProvider.System.GetUtcNow()).JudgeAllAsync(lines, CancellationToken.None))
                {
                    var shown = judged.Line with { Evaluation = judged.Line.Evaluation?.Show(Include.Problems) };
                    Stream.Null.Write(JsonSerializer.SerializeToUtf8Bytes(shown, AuditJson.Wire.AuditLine));
                    if (judged.Line.Line % 500 == 0)
                        peak = Math.Max(peak, GC.GetTotalMemory(forceFullCollection: false));
                }
            });
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count,7} {audit,9:0} {echo,9:0} {audit / echo,9:0.00} {(peak - idle) / 1048576.0,12:0}"));
        }

        return 0;
    }

    private static async Task<double> RateAsync(int count, Func<IAsyncEnumerable<RecordLine>, Task> run)
    {
        var began = Stopwatch.GetTimestamp();
        await run(LinesAsync(count));
        return count / Stopwatch.GetElapsedTime(began).TotalSeconds;
    }

    private static async IAsyncEnumerable<RecordLine> LinesAsync(int count)
    {
        for (var i = 0; i < count; i++)
            yield return new RecordLine(i + 1, Month.Json[i % Month.Json.Count], null);
        await Task.CompletedTask;
    }

    // Reads each record and writes it again, on all cores in turns as the audit does.
    private static async Task EchoAsync(IAsyncEnumerable<RecordLine> lines)
    {
        await foreach (var batch in lines.Chunk(100))
        {
            var written = new byte[batch.Length][];
            Parallel.For(0, batch.Length, i => written[i] = JsonSerializer.SerializeToUtf8Bytes(
                JsonSerializer.Deserialize(batch[i].Utf8.Span, RecordJson.Default.ServiceRecord)!, RecordJson.Default.ServiceRecord));
            foreach (var line in written)
                Stream.Null.Write(line);
        }
    }
}
