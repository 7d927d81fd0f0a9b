using Wording;

namespace Api.Tests;

/// <summary>How the name of a place in a record is said: what the trade writes in capitals is in capitals, wherever it stands.</summary>
public sealed class PlaceWordsTests
{
    [Theory]
    [InlineData("/ambientCo", "ambient CO")]
    [InlineData("/ambientCo/runningPeakPpm", "ambient CO, running peak (ppm)")]
    [InlineData("/coAlarm/present", "CO alarm, present")]
    [InlineData("/combustion/readings/0/coPpm", "combustion, reading 1, CO (ppm)")]
    [InlineData("/combustion/readings/0/co2Percent", "combustion, reading 1, CO2 (%)")]
    [InlineData("/makerLimits/coCo2RatioMax", "maker limits, CO CO2 ratio max")]
    [InlineData("/appliance/lpgFuel", "appliance, LPG fuel")]
    [InlineData("/flue/conditionOk", "flue, condition ok")]
    [InlineData("", "the whole visit")]
    public void A_place_is_said_as_the_trade_writes_it(string pointer, string words) => Assert.Equal(words, Say.Place(pointer));
}
