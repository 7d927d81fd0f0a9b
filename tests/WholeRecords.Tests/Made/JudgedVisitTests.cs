using System.Globalization;
using WholeRecords.Tests.Properties;
using Xunit.Abstractions;

namespace WholeRecords.Tests.Made;

/// <summary>Made visits judged by the rules of today: others than those of PROPERTIES.md, and as many as tests/long/visits says.</summary>
public sealed class JudgedVisitTests(ITestOutputHelper output)
{
    private static readonly int Number = int.TryParse(Environment.GetEnvironmentVariable("VISITS"), CultureInfo.InvariantCulture, out var set) ? set : 300;

    [Fact]
    public void No_danger_that_a_record_shows_or_a_visit_before_left_is_closed()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var figures = new MadeVisitFigures(new TodaysEngine(), Number, first: TodaysProperties.Visited);
        output.WriteLine($"{figures.Section()}\nin {clock.Elapsed}");
        Assert.True(figures.Holes.Count == 0, string.Join('\n', figures.Holes.Take(50)));
    }
}
