using Visits;
using Wire;

namespace WholeRecords.Tests.Properties;

/// <summary>What the properties are asked of is what people get.</summary>
public sealed class TodaysEngineTests
{
    [Fact]
    public async Task The_engine_says_what_the_road_of_the_command_says()
    {
        var engine = new TodaysEngine();
        var onTheRoad = (await Judged.AllAsync(CancellationToken.None)).Where(one => one.Outcome is not null).ToList();
        Assert.True(onTheRoad.Count > 350);
        Assert.All(onTheRoad, one =>
        {
            var said = engine.Judge(Held.Read(one.Whole.Utf8).Record!, Lookup.None);
            Assert.Equal((one.Outcome, one.MayClose), (WireNames.Of(said.Outcome), said.MayClose));
        });
    }
}
