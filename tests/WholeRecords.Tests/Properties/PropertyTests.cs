using Xunit.Abstractions;

namespace WholeRecords.Tests.Properties;

public sealed class PropertyTests(ITestOutputHelper output)
{
    [Fact]
    public void Try()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var run = new PropertyRun(new TodaysEngine(), WholeRecord.All, new AdditionProperty(), new RemovalProperty());
        output.WriteLine($"{clock.Elapsed}");
        foreach (var claim in run.Claims)
        {
            output.WriteLine($"{claim.Id} asked {run.Asked(claim)} found {run.Of(claim).Count()}");
            foreach (var kind in run.Of(claim).GroupBy(one => one.Kind))
                output.WriteLine($"   {kind.Key} {kind.Count()} {kind.First()}");
        }
    }
}
