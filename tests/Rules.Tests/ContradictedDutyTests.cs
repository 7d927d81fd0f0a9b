using Findings;

namespace Rules.Tests;

/// <summary>
/// Section 1 and the last lines of "Reasons" of the page of duties: a duty whose reason or statement the record speaks against is contradicted,
/// and closing is held as before.
/// </summary>
public sealed class ContradictedDutyTests
{
    private const string Off = "\"/appliance/stateOnLeaving\": \"turnedOff\", \"/appliance/leftOffBecause\": \"noGas\"";

    [Theory]
    [InlineData("""{ "/work/notDone": [{ "what": "/gasSupply/rate", "because": "noMeter" }] }""", "examineAfterWork")]
    [InlineData("""{ "/work/notDone": [{ "what": "/gasSupply/rate", "because": "displayDead" }], "/gasSupply/rate": null }""", "examineAfterWork")]
    [InlineData("""{ "/work/notDone": [{ "what": "/combustion/readings", "because": "noInstrument" }] }""", "proveCombustionCircuit")]
    [InlineData("""{ "/work/notDone": [{ "what": "/heatExchanger/inspected", "because": "makerSaysNotNeeded" }], "/heatExchanger/inspected": null }""", "serviceFireSide")]
    [InlineData("""{ "/work/notDone": [{ "what": "/combustion/readings", "because": "noInstrument" }], "/combustion/readings": [] }""", "proveCombustionCircuit")]
    [InlineData("""{ "/work/notDone": [{ "what": "/safetyDevices", "because": "customerRefused" }], "/safetyDevices": null }""", "safetyDevices")]
    [InlineData("""{ "/work/result": "noAccess" }""", "identify")]
    [InlineData("""{ "/work/result": "awaitingParts" }""", "identify")]
    [InlineData("""{ "/work/noGasJointOpened": true }""", "proveGasPath")]
    [InlineData("""{ "/water/systemType": "openVented" }""", "waterCondensateElectrics")]
    [InlineData("""{ "/electrical/earthOhm": 20 }""", "waterCondensateElectrics")]
    [InlineData("""{ "/paperwork/landlordName": true }""", "identify")]
    [InlineData("""{ "/flue/spillageTestPassed": true }""", "examineAfterWork")]
    public void It_is_shown_and_holds(string set, string kind)
    {
        var said = RuleSet.Engine.Evaluate(RuleSet.Example(set));
        Assert.Equal(DutyState.Contradicted, Assert.Single(said.Duties, duty => duty.Kind == kind).State);
        Assert.False(said.Closing.Allowed);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{ "/work/notDone": [{ "what": "/gasSupply/rate", "because": "noMeter" }], "/gasSupply/rate": null, "/gasSupply/meterKind": null }""")]
    [InlineData("""{ "/work/result": "gasOff", "/combustion": null, "/appliance/stateOnLeaving": "turnedOff" }""")]
    [InlineData("""{ "/gasSupply/rate": null, "/gasSupply/applianceInletMbar": null, "/combustion": null }""")]
    public void Where_nothing_speaks_against_it_none_is(string set) =>
        Assert.DoesNotContain(RuleSet.Engine.Evaluate(RuleSet.Example(set)).Duties, duty => duty.State == DutyState.Contradicted);

    /// <summary>A danger is not covered by the question beside it.</summary>
    [Fact]
    public void A_danger_shows_the_duty_as_bad_all_the_same() => Assert.Equal(DutyState.Bad, Assert.Single(
        RuleSet.Engine.Evaluate(RuleSet.Example("""{ "/combustion/readings/0/coPpm": 900, "/work/notDone": [{ "what": "/combustion/readings", "because": "noInstrument" }] }""")).Duties,
        duty => duty.Kind == "proveCombustionCircuit").State);

    /// <summary>What was put off stays put off where the record says otherwise of something else.</summary>
    [Fact]
    public void What_was_put_off_waits_though_another_part_of_it_is_contradicted()
    {
        var said = RuleSet.Engine.Evaluate(RuleSet.Example($$"""{ {{Off}}, "/gasSupply/applianceInletMbar": null, "/gasSupply/burnerMbar": null, "/combustion": null, "/safetyDevices": null, "/work/notDone": [{ "what": "/gasSupply/rate", "because": "noMeter" }], "/flue/effectivenessConfirmed": null }"""));
        Assert.Equal(DutyState.Contradicted, Assert.Single(said.Duties, duty => duty.Kind == "examineAfterWork").State);
        Assert.Contains(said.Deferrals!, deferral => deferral.Part == Part.FlueEffective && deferral.Waits);
        Assert.Contains(said.Due, due => due.BeforeUse == true && due.What.Contains("operating pressure", StringComparison.Ordinal));
    }
}
