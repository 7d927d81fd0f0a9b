using System.Diagnostics;
using System.Globalization;

namespace Benchmarks;

/// <summary>One thing that is done with each record of the month, and how long it takes.</summary>
/// <param name="name">What it is.</param>
/// <param name="run">Does it with the record of an index.</param>
/// <param name="onAllCores">Whether the records are done on all cores, as in an audit, and not one after the other.</param>
internal sealed class Timed(string name, Func<int, object?> run, bool onAllCores = false)
{
    private readonly List<double> _times = [];

    public string Name => name;

    /// <summary>The median of all rounds.</summary>
    public double Microseconds => _times.Order().ElementAt(_times.Count / 2);

    public double Kilobytes { get; private set; }

    /// <summary>
    /// Times all in turns, so that a busy machine troubles all of them alike, and in another order each round: in one that stays, the collector
    /// would come during the same part each time, and that part alone would pay for what all have allocated.
    /// </summary>
    public static void InTurns(int rounds, IReadOnlyList<Timed> all)
    {
        var random = new Random(rounds);
        Timed[] turns = [.. all];
        for (var round = -rounds / 2; round < rounds; round++)
        {
            random.Shuffle(turns);
            foreach (var one in turns)
                one.Round(isCounted: round >= 0);
        }
    }

    public static void Print(IReadOnlyList<Timed> all)
    {
        Console.WriteLine($"{"",-46} {"us",8} {"ratio",7} {"KB",8}");
        foreach (var one in all)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{one.Name,-46} {one.Microseconds,8:0.0} {one.Microseconds / all[0].Microseconds,7:0.00} {one.Kilobytes,8:0.0}"));
    }

    private void Round(bool isCounted)
    {
        var count = Month.Records.Count;
        var bytes = GC.GetTotalAllocatedBytes(precise: true);
        var began = Stopwatch.GetTimestamp();
        if (onAllCores)
            Parallel.For(0, count, i => run(i));
        else
            OneAfterTheOther(count);

        var took = Stopwatch.GetElapsedTime(began);
        if (!isCounted)
            return;

        _times.Add(took.TotalMicroseconds / count);
        Kilobytes = (GC.GetTotalAllocatedBytes(precise: true) - bytes) / 1024.0 / count;
    }

    private void OneAfterTheOther(int count)
    {
        for (var i = 0; i < count; i++)
            run(i);
    }
}
