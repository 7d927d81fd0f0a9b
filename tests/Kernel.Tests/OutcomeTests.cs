using System.Text.Json.Nodes;
using Findings;

namespace Kernel.Tests;

/// <summary>How single answers make the record's outcome: unsafe before incomplete before advisory before pass.</summary>
public sealed class OutcomeTests
{
    [Theory]
    [InlineData(1, 1, 1, 1, 1, true, OverallOutcome.Unsafe)]
    [InlineData(0, 1, 0, 1, 1, false, OverallOutcome.Incomplete)]
    [InlineData(0, 0, 1, 1, 1, false, OverallOutcome.Incomplete)]
    [InlineData(0, 0, 0, 1, 1, true, OverallOutcome.Incomplete)]
    [InlineData(0, 0, 0, 1, 1, false, OverallOutcome.Advisory)]
    [InlineData(0, 0, 0, 0, 1, true, OverallOutcome.Incomplete)]
    [InlineData(0, 0, 0, 0, 1, false, OverallOutcome.Pass)]
    [InlineData(0, 0, 0, 0, 0, false, OverallOutcome.Incomplete)]
    public void The_gravest_that_applies_wins(int @unsafe, int missing, int error, int advisory, int pass, bool asked, OverallOutcome expected) =>
        Assert.Equal(expected, Outcomes.Combine(
            new OutcomeCounts { Unsafe = @unsafe, Missing = missing, Error = error, Advisory = advisory, Pass = pass }, asked));

    [Fact]
    public void A_reading_in_the_action_band_leaves_the_record_incomplete_until_the_maker_decides()
    {
        var undecided = Samples.Engine.Evaluate(Samples.Changed(json => json["combustion"]!["readings"]![0]!["coPpm"] = 400));
        Assert.Equal(OverallOutcome.Incomplete, undecided.Outcome);
        Assert.False(undecided.Closing.Allowed);

        var decided = Samples.Engine.Evaluate(Samples.Changed(json =>
        {
            json["combustion"]!["readings"]![0]!["coPpm"] = 400;
            json["makerLimits"]!["decisionReference"] = "invented decision 12";
        }));
        Assert.Equal(OverallOutcome.Advisory, decided.Outcome);
        Assert.True(decided.Closing.Allowed);
    }

    /// <summary>Where a danger was isolated and who was told of it are owed; free text settles neither.</summary>
    [Theory]
    [InlineData("isolatedAt", "danger-isolated")]
    [InlineData("told", "defect-notified")]
    public void A_dangerous_boiler_without_place_or_people_stays_open(string member, string asking)
    {
        var evaluation = Samples.Engine.Evaluate(Samples.Changed(json =>
        {
            MakeSafe(json);
            json["defects"]![0]!.AsObject().Remove(member);
            json["defects"]![0]!["reportedTo"] = "responsible person and owner, isolated at the appliance valve";
        }));
        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Contains(asking, evaluation.Closing.BlockedBy);
        Assert.False(evaluation.Closing.Allowed);
    }

    [Fact]
    public void A_dangerous_boiler_that_was_made_safe_may_be_closed_and_stays_unsafe()
    {
        var evaluation = Samples.Engine.Evaluate(Samples.Changed(MakeSafe));
        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Empty(evaluation.Closing.BlockedBy);
        Assert.True(evaluation.Closing.Allowed);
        Assert.Equal(DutyState.Deferred, Assert.Single(evaluation.Duties, duty => duty.Kind == "safetyDevices").State);
    }

    private static void MakeSafe(JsonNode json)
    {
        json["combustion"]!["readings"]![0]!["coPpm"] = 900;
        json["appliance"]!["stateOnLeaving"] = "turnedOff";
        json["safetyDevices"] = null;
        json["defects"] = JsonNode.Parse("""
            [{ "description": "ratio too high", "location": "kitchen", "topic": "combustion", "class": "atRisk", "action": "turnedOff",
               "permission": "given", "userToldNotToUse": true, "labelled": true, "noticeNumber": "W-1", "copyLeft": true, "userSigned": true,
               "cause": "wear", "mechanism": "incompleteCombustion", "isolatedAt": "applianceValve", "told": ["responsiblePerson", "owner"], "notifiedOn": "2026-09-14",
               "reportable": { "decision": "no", "reason": "wear" } }]
            """);
    }
}
