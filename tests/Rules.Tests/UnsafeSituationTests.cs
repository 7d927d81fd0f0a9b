using Findings;

namespace Rules.Tests;

/// <summary>What an unsafe situation does to the whole record, by IGEM/G/11 as the rules have it. Invented scenarios.</summary>
public sealed class UnsafeSituationTests
{
    private const string Documented = """
        "description": "products in the room", "location": "kitchen", "topic": "flue", "cause": "wear", "mechanism": "other", "permission": "given",
        "userToldNotToUse": true, "labelled": true, "noticeNumber": "N-31", "copyLeft": true, "userSigned": true, "notifiedOn": "2026-09-14",
        "told": ["responsiblePerson", "owner"]
        """;

    private const string LookedAtAgain = """
        "reexaminedAt": "2026-09-14T10:15:00+01:00",
        """;

    private const string ShutAtTheBoiler = """
        "isolatedAt": "applianceValve",
        """;

    [Fact]
    public void Propane_work_with_a_natural_gas_category_is_unsafe_by_its_ratio_and_cannot_be_closed()
    {
        var evaluation = Evaluate("""
            { "/appliance/fuel": "propane", "/appliance/plateFuel": "propane", "/combustion/readings/0/coPpm": 1610, "/combustion/readings/0/co2Percent": 10.0 }
            """);

        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Contains("0.0161", RuleSet.AnswersOf(RuleIds.CombustionRatio, evaluation)[0].Message, StringComparison.Ordinal);
        Assert.Equal(Outcome.Missing, Assert.Single(RuleSet.AnswersOf(RuleIds.CategoryCoversAppliance, evaluation)).Outcome);
        Assert.False(evaluation.Closing.Allowed);
        Assert.Contains(RuleIds.CategoryCoversAppliance, evaluation.Closing.BlockedBy);
    }

    /// <summary>Several rules find one danger at one place, and the engineer's defect is the word on all of it: it is put right once.</summary>
    [Theory]
    [InlineData("""{ "/flue/supportsOk": false }""", 1)]
    [InlineData("""{ "/flue/supportsOk": false, "/appliance/stateOnLeaving": "turnedOff", "/defects/-": { "topic": "flue", "class": "atRisk", "action": "turnedOff", "isolatedAt": "applianceValve" } }""", 1)]
    [InlineData("""{ "/flue/supportsOk": false, "/flue/visualOk": false, "/appliance/stateOnLeaving": "turnedOff", "/defects/-": { "topic": "flue", "subject": "/flue", "class": "atRisk", "action": "turnedOff", "isolatedAt": "applianceValve" } }""", 1)]
    [InlineData("""{ "/flue/supportsOk": false, "/combustion/readings/0/coPpm": 2500 }""", 2)]
    public void One_danger_is_one_line_of_what_is_due_before_the_boiler_is_used(string set, int lines)
    {
        var evaluation = Evaluate(set);
        Assert.True(evaluation.Situation!.Dangers.Count >= lines);
        Assert.Equal(lines, evaluation.Due.Count(due => due.BeforeUse == true && due.What.Contains("danger is put right", StringComparison.Ordinal)));
    }

    /// <summary>Section 3 of the page of duties, danger on what was not worked on: made known, and not this boiler's to hold or to carry on.</summary>
    [Theory]
    [InlineData("atRisk", OverallOutcome.Advisory)]
    [InlineData("immediatelyDangerous", OverallOutcome.Unsafe)]
    public void A_danger_of_another_appliance_that_was_made_known_holds_nothing_and_is_not_carried_on(string classed, OverallOutcome outcome)
    {
        var evaluation = Evaluate($$"""{ "/defects/-": { "class": "{{classed}}", "action": "none", "concerns": "otherAppliance", {{Documented}} } }""");

        Assert.Equal((outcome, true), (evaluation.Outcome, evaluation.Closing.Allowed));
        Assert.Equal((true, "otherAppliance"), (evaluation.Situation!.Handled, Assert.Single(evaluation.Situation.Dangers).Concerns));
        Assert.DoesNotContain(evaluation.Due, due => due.BeforeUse == true);

        var leaking = Evaluate($$"""
            { "/tightnessTests/0/gasSmell": true, "/appliance/stateOnLeaving": "turnedOff", "/escape": { "reported": true, "gasIsolated": true, "isolatedAt": "emergencyControl", "told": ["responsiblePerson"], "reference": "E-1" },
              "/defects/-": { "class": "{{classed}}", "action": "turnedOff", "concerns": "otherAppliance", "isolatedAt": "otherAppliances", {{Documented.Replace("\"topic\": \"flue\"", "\"topic\": \"tightness\"", StringComparison.Ordinal)}} } }
            """);
        Assert.Contains(RuleIds.TightnessResult, leaking.Closing.BlockedBy);
    }

    [Theory]
    [InlineData("rectified", LookedAtAgain, "inUse", "", OverallOutcome.Advisory)]
    [InlineData("rectified", "", "inUse", $"{RuleIds.ImmediatelyDangerousRecorded} {RuleIds.RectifiedReexamined} {RuleIds.UnsafeLeftInUse}")]
    [InlineData("disconnected", ShutAtTheBoiler, "disconnected", "")]
    [InlineData("disconnected", "", "disconnected", $"{RuleIds.DangerIsolated} {RuleIds.ImmediatelyDangerousRecorded}")]
    [InlineData("turnedOff", ShutAtTheBoiler, "turnedOff", $"{RuleIds.DefectMadeSafe} {RuleIds.ImmediatelyDangerousRecorded}")]
    [InlineData("none", "", "inUse", $"{RuleIds.DefectMadeSafe} {RuleIds.ImmediatelyDangerousRecorded} {RuleIds.UnsafeLeftInUse}")]
    public void Immediately_dangerous_stays_unsafe_until_put_right_and_closes_only_when_dealt_with(string action, string shown, string state, string heldBy, OverallOutcome outcome = OverallOutcome.Unsafe)
    {
        var evaluation = Evaluate($$"""
            {
              "/appliance/stateOnLeaving": "{{state}}", "/work/gaswaysSealed": true,
              "/defects/-": { "class": "immediatelyDangerous", "action": "{{action}}", {{shown}} {{Documented}} }
            }
            """);

        Assert.Equal(outcome, evaluation.Outcome);
        Assert.Equal(heldBy.Length == 0, evaluation.Situation!.Handled);
        Assert.Equal((heldBy.Length == 0, heldBy), (evaluation.Closing.Allowed, string.Join(' ', evaluation.Closing.BlockedBy)));
    }

    [Theory]
    [InlineData("true", true)]
    [InlineData("false", false)]
    public void At_risk_left_on_against_advice_closes_only_with_a_signature(string isSigned, bool closes)
    {
        var refused = Documented.Replace("\"given\"", "\"refused\"", StringComparison.Ordinal)
            .Replace("\"userSigned\": true", $"\"userSigned\": {isSigned}", StringComparison.Ordinal);

        var evaluation = Evaluate($$"""{ "/defects/-": { "class": "atRisk", "action": "none", {{refused}} } }""");

        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Equal((closes, evaluation.Closing.BlockedBy), (evaluation.Closing.Allowed, evaluation.Closing.BlockedBy));
    }

    [Fact]
    public void A_defect_put_right_does_not_settle_a_reading_that_is_still_unsafe()
    {
        var evaluation = Evaluate($$"""
            { "/combustion/readings/0/coPpm": 900, "/defects/-": { "class": "atRisk", "action": "rectified", {{Documented.Replace("flue", "combustion", StringComparison.Ordinal)}} } }
            """);

        Assert.Contains(RuleIds.CombustionRatio, evaluation.Closing.BlockedBy);
        Assert.Contains(RuleIds.UnsafeLeftInUse, evaluation.Closing.BlockedBy);
    }

    private static Evaluation Evaluate(string set) => RuleSet.Engine.Evaluate(RuleSet.Example(set));
}
