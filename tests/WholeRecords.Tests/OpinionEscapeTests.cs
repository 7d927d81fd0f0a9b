using System.Collections.Concurrent;
using SecondOpinion.Duties;
using Xunit.Abstractions;

namespace WholeRecords.Tests;

/// <summary>What the second person says cannot be talked away: duties 6.4 and 6.7 over the whole records.</summary>
public sealed class OpinionEscapeTests(ITestOutputHelper output)
{
    /// <summary>Pairs of changes tried on each record, drawn by a fixed seed.</summary>
    private const int PairsOfEach = 20;

    /// <summary>
    /// An alarm that sounded is a danger to whoever could not go in; on a visit that was carried out it holds until CO was looked for, as
    /// landlordCheck/alarm-had-sounded-and-nothing-was-measured expects.
    /// </summary>
    private const string AlarmBehindADoor = "annualService/nobody-in-alarm-sounding-and-walked-away";

    [Fact]
    public void No_word_makes_a_dangerous_record_close_as_a_job_or_lose_its_danger()
    {
        var escaped = new ConcurrentBag<string>();
        var tried = 0;
        Parallel.ForEach(SecondlyJudged.All.Where(one => one.Said?.Outcome == Whole.Unsafe), one =>
        {
            var record = SecondlyJudged.JsonOf(one.Whole);
            var changes = Change.Of(record);
            var draw = new Random(7);
            var pairs = Enumerable.Range(0, PairsOfEach).Select(_ => Both(changes[draw.Next(changes.Count)], changes[draw.Next(changes.Count)]));
            foreach (var change in changes.Concat(pairs))
            {
                var changed = record.DeepClone();
                change.On(changed);
                if (SecondlyJudged.Read(changed) is not { } read)
                    continue;
                Interlocked.Increment(ref tried);
                var after = SecondlyJudged.Judge(read);
                if (one.Whole.Name == AlarmBehindADoor && after.Outcome == Whole.Incomplete)
                    continue;
                if (Escape(one.Said!, after) is { } how)
                    escaped.Add($"{one.Whole.Name}, {change.Name}: {how}");
            }
        });

        output.WriteLine($"{tried} changes");
        Assert.True(tried > 20_000);
        Assert.True(escaped.IsEmpty, string.Join('\n', escaped.Order(StringComparer.Ordinal).Take(40)));
    }

    /// <summary>How a danger was talked away; null where it was not.</summary>
    private static string? Escape(WholeOpinion before, WholeOpinion after)
    {
        if (after.Outcome != Whole.Unsafe)
            return $"{after.Outcome}{(after.MayClose ? " and closed" : "")}";
        if (after.ClosesAs is { } closes && closes != ClosesAs.Visit && closes != before.ClosesAs)
            return $"closes as {closes}";
        return after.MayClose && !after.Situation.IsHandled ? "closes unhandled" : after.MayClose && !before.MayClose ? "closes" : null;
    }

    private static Change Both(Change one, Change other) => new($"{one.Name} and {other.Name}", record =>
    {
        one.On(record);
        other.On(record);
    });
}
