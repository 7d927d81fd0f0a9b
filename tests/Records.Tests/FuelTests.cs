using System.Text.Json.Nodes;
using Records.Members;

namespace Records.Tests;

/// <summary>Which records are read without the fuel: those of a visit on which nobody got to the boiler, as long as nothing was measured, tested or fitted.</summary>
public class FuelTests
{
    private const string NobodyIn = """{"recordId":"x","jobType":"landlordCheck","jurisdiction":"GB-ENG","finishedAt":"2026-09-14T10:25:00Z","work":{"result":"noAccess"},"appliance":{}}""";

    [Theory]
    [InlineData("noAccess")]
    [InlineData("refused")]
    public void Where_nothing_could_be_seen_the_fuel_is_not_asked(string result)
    {
        var read = Bodies.Read(Bodies.With(NobodyIn, "/work/result", $"\"{result}\""));
        Assert.Empty(read.Faults);
        Assert.Null(RecordValues.At(read.Record!, "/appliance/fuel"));
    }

    public static TheoryData<string> OtherResults => [.. RecordMembers.At("/work/result").AllowedValues.Except(["noAccess", "refused"])];

    [Theory]
    [MemberData(nameof(OtherResults))]
    public void Beside_any_other_result_it_is(string result) => IsAskedFor(Bodies.With(NobodyIn, "/work/result", $"\"{result}\""));

    [Theory]
    [InlineData("/work", "null")]
    [InlineData("/work", "{}")]
    [InlineData("/work/result", "null")]
    [InlineData("/combustion", """{"readings":[{}]}""")]
    [InlineData("/combustion", """{"airInlet":{"o2Percent":20.9}}""")]
    [InlineData("/combustion", """{"airInlet":{"co2Percent":0.1}}""")]
    [InlineData("/gasSupply", """{"meterStandingMbar":22}""")]
    [InlineData("/gasSupply", """{"meterOperatingMbar":0}""")]
    [InlineData("/gasSupply", """{"applianceInletMbar":20}""")]
    [InlineData("/gasSupply", """{"burnerMbar":-1}""")]
    [InlineData("/gasSupply", """{"rate":{}}""")]
    [InlineData("/tightnessTests", "[{}]")]
    [InlineData("/partsFitted", "[{}]")]
    public void Where_the_record_shows_that_somebody_was_at_the_boiler_it_is(string place, string json) => IsAskedFor(Bodies.With(NobodyIn, place, json));

    [Theory]
    [InlineData("/combustion", """{"readings":[],"airInlet":{"notPracticableReason":"nobody in"}}""")]
    [InlineData("/gasSupply", """{"meterKind":"none","reportedTo":"the transporter"}""")]
    [InlineData("/tightnessTests", "[]")]
    [InlineData("/partsFitted", "[]")]
    [InlineData("/previousVisit", """{"finishedAt":"2025-09-14T10:25:00Z","readings":[{"coPpm":96}]}""")]
    public void What_states_that_nothing_was_done_asks_for_nothing(string place, string json) => Assert.Empty(Bodies.Read(Bodies.With(NobodyIn, place, json)).Faults);

    [Fact]
    public void A_fuel_that_is_none_is_named_once() => Assert.Equal(
        ["#/appliance/fuel unknownValue"],
        Bodies.Read(Bodies.With(Bodies.With(NobodyIn, "/work", "{}"), "/appliance/fuel", "\"coal\"")).Faults.Select(fault => $"{fault.Pointer} {fault.Code}"));

    private static void IsAskedFor(string body)
    {
        var fault = Assert.Single(Bodies.Read(body).Faults);
        Assert.Equal(("#/appliance/fuel", "requiredMember"), (fault.Pointer, fault.Code));
        var named = JsonNode.Parse(body)!;
        named["appliance"]!["fuel"] = "propane";
        Assert.Empty(Bodies.Read(named.ToJsonString()).Faults);
    }
}
