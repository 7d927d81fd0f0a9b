using Findings;

namespace Rules.Tests;

/// <summary>When a job on a dangerous boiler or a leaking installation may be closed, by IGEM/G/11 as the rules have it. Invented scenarios.</summary>
public sealed class ClosingTests
{
    private const string Papers = """
        "description": "x", "location": "kitchen", "cause": "wear", "mechanism": "other", "userToldNotToUse": true, "labelled": true,
        "noticeNumber": "N1", "copyLeft": true, "notifiedOn": "2026-09-14", "told": ["responsiblePerson", "owner"]
        """;

    private const string Given = $"{Papers}, \"userSigned\": true, \"permission\": \"given\"";
    private const string Refused = $"{Papers}, \"userSigned\": true, \"permission\": \"refused\"";

    private const string LeakingCase = """
        "/appliance/casePressure": "positive", "/flue/caseSealOk": false
        """;

    private const string Spilling = """
        "/appliance/flueType": "openFlued", "/flue/spillageTestPassed": false, "/flue/flowTestPassed": true, "/flue/fansRunningDuringSpillage": true,
        "/ventilation/freeAreaCm2": 200, "/ventilation/extractFanInRoom": false
        """;

    private const string HighRatio = """
        "/combustion/readings/0/coPpm": 2000, "/makerLimits/decisionReference": "M1"
        """;

    private const string NothingOpened = """
        "/disturbedJoints": [], "/heatExchanger/topPlateRemoved": false, "/heatExchanger/cleaned": false, "/heatExchanger/deposits": "none",
        "/heatExchanger/methodAllowedByMaker": true, "/makerLimits/sealsToRenew": []
        """;

    private const string Leaking = $"""
        {NothingOpened}, "/tightnessTests/0/dropMbar": 15, "/tightnessTests/0/pipeworkOnlyMovementMbar": 15, "/tightnessTests/0/gasSmell": true
        """;

    private const string RoomFull = """
        "/ambientCo": { "beforePpm": 0, "runningPeakPpm": 500, "afterPpm": 500, "cause": "the case", "ventilated": true }
        """;

    private const string ReadAgain = """
        "/combustion/readings/-": { "rate": "maximum", "stage": "afterWork", "coPpm": 900, "co2Percent": 9.2, "o2Percent": 4.5, "flueTemperatureC": 60,
        "airTemperatureC": 18, "instrument": "FA-1", "takenAt": "2026-09-14T09:55:00+01:00", "loadPercent": 100 }
        """;

    public static TheoryData<string, string, string> LeftOn => new()
    {
        { LeakingCase, "\"topic\": \"flue\", \"class\": \"atRisk\", \"action\": \"rectified\"", Refused },
        { LeakingCase, "\"topic\": \"flue\", \"class\": \"atRisk\", \"action\": \"none\"", Refused },
        { Spilling, "\"topic\": \"flue\", \"class\": \"atRisk\", \"action\": \"rectified\"", Refused },
        { HighRatio, "\"topic\": \"combustion\", \"class\": \"atRisk\", \"action\": \"rectified\"", Refused },
        { HighRatio, "\"topic\": \"combustion\", \"class\": \"immediatelyDangerous\", \"action\": \"rectified\", \"emergencyReference\": \"x\"", Refused },
        { "\"/tightnessTests/0/gasSmell\": true", "\"topic\": \"tightness\", \"class\": \"other\", \"action\": \"rectified\", \"emergencyReference\": \"x\"", Refused },
        { "\"/tightnessTests/0/gasSmell\": true", "\"topic\": \"tightness\", \"class\": \"other\", \"action\": \"none\", \"emergencyReference\": \"x\"", Refused },
        { "\"/recordId\": \"a\"", "\"topic\": \"unsafeSituation\", \"class\": \"immediatelyDangerous\", \"action\": \"disconnected\", \"isolatedAt\": \"applianceValve\"", Given },
        { "\"/recordId\": \"a\"", "\"topic\": \"unsafeSituation\", \"class\": \"atRisk\", \"action\": \"turnedOff\", \"isolatedAt\": \"applianceValve\"", Given },
        { "\"/appliance/plateFuel\": \"propane\"", "\"subject\": \"/appliance\", \"class\": \"atRisk\", \"action\": \"turnedOff\", \"isolatedAt\": \"applianceValve\"", Given },
        { "\"/appliance/plateFuel\": \"propane\"", "\"subject\": \"/appliance\", \"class\": \"atRisk\", \"action\": \"none\", \"userSigned\": false", $"{Papers}, \"permission\": \"refused\"" },
    };

    [Theory]
    [MemberData(nameof(LeftOn))]
    public void A_danger_left_in_use_is_not_closed_by_what_the_paper_says(string danger, string defect, string papers)
    {
        var evaluation = Evaluate($$"""{ {{danger}}, "/defects/-": { {{papers}}, {{defect}} } }""");

        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.False(evaluation.Closing.Allowed);
        Assert.Contains(RuleIds.UnsafeLeftInUse, evaluation.Closing.BlockedBy);
    }

    public static TheoryData<string, string, string> GoneThrough => new()
    {
        { HighRatio, "\"topic\": \"combustion\", \"class\": \"atRisk\", \"action\": \"none\"", Refused },
        { LeakingCase, "\"topic\": \"flue\", \"class\": \"immediatelyDangerous\", \"action\": \"none\", \"emergencyReference\": \"E-1\"", Refused },
        { $"{LeakingCase}, \"/appliance/stateOnLeaving\": \"disconnected\", \"/work/gaswaysSealed\": true", "\"topic\": \"flue\", \"class\": \"immediatelyDangerous\", \"action\": \"disconnected\", \"isolatedAt\": \"applianceValve\"", Given },
        { "\"/appliance/plateFuel\": \"propane\", \"/appliance/stateOnLeaving\": \"turnedOff\"", "\"subject\": \"/appliance\", \"class\": \"atRisk\", \"action\": \"turnedOff\", \"isolatedAt\": \"applianceValve\"", Given },
    };

    [Theory]
    [MemberData(nameof(GoneThrough))]
    public void The_procedure_gone_through_to_its_end_closes_the_job_and_the_record_stays_unsafe(string danger, string defect, string papers)
    {
        var evaluation = Evaluate($$"""{ {{danger}}, "/defects/-": { {{papers}}, {{defect}} } }""");

        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Empty(evaluation.Closing.BlockedBy);
    }

    public static TheoryData<string, string> Escapes => new()
    {
        { Leaking, "\"subject\": \"/tightnessTests\", \"class\": \"other\"" },
        { Leaking, "\"subject\": \"/tightnessTests\", \"class\": \"immediatelyDangerous\"" },
        { "\"/tightnessTests/0/gasSmell\": true", "\"subject\": \"/tightnessTests\", \"class\": \"immediatelyDangerous\"" },
        { RoomFull, "\"topic\": \"ambientAir\", \"class\": \"immediatelyDangerous\"" },
        { $"{Leaking}, \"/tightnessTests/0/stage\": \"beforeWork\"", "\"subject\": \"/tightnessTests\", \"class\": \"immediatelyDangerous\"" },
    };

    [Theory]
    [MemberData(nameof(Escapes))]
    public void An_escape_is_not_closed_by_switching_the_boiler_off(string escape, string defect)
    {
        var set = $$"""{{escape}}, "/appliance/stateOnLeaving": "turnedOff", "/defects/-": { {{Given}}, {{defect}}, "action": "disconnected", "isolatedAt": "applianceValve" }""";

        var evaluation = Evaluate($"{{ {set} }}");
        Assert.Equal(OverallOutcome.Unsafe, evaluation.Outcome);
        Assert.Contains(RuleIds.EscapeMadeSafe, evaluation.Closing.BlockedBy);
        Assert.Equal(["/escape/gasIsolated", "/escape/reference"], evaluation.Missing.Where(item => item.NeededBy.Contains(RuleIds.EscapeMadeSafe)).Select(item => item.Pointer).Order(StringComparer.Ordinal));

        var reported = Evaluate($$"""{ {{set.Replace("applianceValve", "emergencyControl", StringComparison.Ordinal).Replace("\"turnedOff\"", "\"disconnected\"", StringComparison.Ordinal)}}, "/work/gaswaysSealed": true, "/escape": { "reported": true, "gasIsolated": true, "isolatedAt": "emergencyControl", "told": ["responsiblePerson"], "reference": "E-1" } }""");
        Assert.Equal(OverallOutcome.Unsafe, reported.Outcome);
        Assert.Empty(reported.Closing.BlockedBy);
    }

    [Fact]
    public void A_gas_leak_left_as_it_is_is_no_pass_in_whatever_class()
    {
        var evaluation = Evaluate("""
            { "/defects/-": { "description": "gas escapes at the meter union", "location": "meter", "class": "other", "mechanism": "gasLeak",
              "cause": "servicing", "action": "none", "notifiedOn": "2026-09-14" } }
            """);

        Assert.Equal(OverallOutcome.Incomplete, evaluation.Outcome);
        Assert.Contains(RuleIds.DefectClassed, evaluation.Closing.BlockedBy);
        Assert.Equal(Outcome.Advisory, Assert.Single(RuleSet.AnswersOf(RuleIds.ReportDecided, evaluation)).Outcome);
    }

    public static TheoryData<string, string> PutRight => new()
    {
        { ReadAgain, "\"subject\": \"/combustion/readings/2\"" },
        { ReadAgain, "\"topic\": \"combustion\", \"reexaminedAt\": \"2026-09-14T10:05:00+01:00\"" },
        { Again("\"dropMbar\": 3, \"permittedDropMbar\": 2, \"permittedDropSource\": \"stated\""), "\"subject\": \"/tightnessTests/0\"" },
        { Again("\"dropMbar\": 3, \"pipeworkOnlyMovementMbar\": 0"), "\"subject\": \"/tightnessTests/0\"" },
        { Again("\"gasSmell\": true"), "\"topic\": \"tightness\", \"reexaminedAt\": \"2026-09-14T10:05:00+01:00\"" },
    };

    [Theory]
    [MemberData(nameof(PutRight))]
    public void What_was_found_put_right_and_measured_again_closes_with_its_defect_and_not_without(string found, string defect)
    {
        var alone = Evaluate($"{{ {found} }}");
        Assert.True(alone.Outcome is OverallOutcome.Unsafe or OverallOutcome.Incomplete);
        Assert.False(alone.Closing.Allowed);
        Assert.Equal(Outcome.Pass, Assert.Single(RuleSet.AnswersOf(RuleIds.EscapeMadeSafe, alone)).Outcome);

        var atRisk = Evaluate($$"""{ {{found}}, "/defects/-": { {{Given}}, {{defect}}, "class": "atRisk", "action": "rectified" } }""");
        Assert.Equal(OverallOutcome.Advisory, atRisk.Outcome);
        Assert.Empty(atRisk.Closing.BlockedBy);

        var dangerous = Evaluate($$"""{ {{found}}, "/defects/-": { {{Given}}, {{defect}}, "class": "immediatelyDangerous", "action": "rectified" } }""");
        Assert.Equal(OverallOutcome.Advisory, dangerous.Outcome);
        Assert.Empty(dangerous.Closing.BlockedBy);
        Assert.Equal((DangerState.PutRight, true), (dangerous.Situation!.State, dangerous.Situation.Handled));
    }

    [Theory]
    [InlineData(Leaking, Cautions.EscapingGas)]
    [InlineData(RoomFull, Cautions.RoomAir)]
    public void An_escape_warns_of_what_escapes(string escape, string caution) => Assert.Equal(
        caution, Evaluate($$"""{ {{escape}} }""").Findings.Single(finding => finding.RuleId == RuleIds.EscapeMadeSafe).Caution);

    [Fact]
    public void An_escape_that_was_shut_off_and_reported_with_nothing_recorded_of_it_is_no_plain_pass() => Assert.Equal(
        OverallOutcome.Advisory, Evaluate("""{ "/escape": { "reported": true, "gasIsolated": true, "isolatedAt": "meter", "told": ["responsiblePerson"], "reference": "E1" }, "/work/relit": true }""").Outcome);

    /// <summary>The test of the example twice, the first with other figures.</summary>
    private static string Again(string first)
    {
        const string Made = """
            "stage": "afterWork", "edition": "4", "installationVolumeM3": 0.012, "installationVolumeFrom": "measured", "largestPipeMm": 22, "supplyPressureBar": 0.03,
            "safeToTouchChecked": true, "letByPressureMbar": 8, "letByRiseMbar": 0, "letByMinutes": 1, "testPressureMbar": 20.4, "stabilisationMinutes": 1,
            "durationMinutes": 2, "appliancesConnected": true, "applianceValvesOpen": true, "gauge": "electronic", "gaugeResolutionMbar": 0.01
            """;
        var found = first.Contains("dropMbar", StringComparison.Ordinal) ? $"\"gasSmell\": false, {first}" : $"\"dropMbar\": 0, {first}";
        return $$"""
            "/tightnessTests": [{ {{Made}}, {{found}} }, { {{Made}}, "dropMbar": 0, "gasSmell": false, "pipeworkOnlyMovementMbar": 0 }]
            """;
    }

    private static Evaluation Evaluate(string set) => RuleSet.Engine.Evaluate(RuleSet.Example(set));
}
