using Findings;
using Records;
using Wire;

namespace Rules.Tests;

/// <summary>Joints above the valve of the appliance carry gas unless the record says otherwise, and a tightness test sees them.</summary>
public sealed class JointPlaceTests
{
    public static TheoryData<JointPlace> AboveTheApplianceValve => [JointPlace.MeterUnion, JointPlace.IsolationValve, JointPlace.Pipework, JointPlace.TestNipple];

    [Theory]
    [MemberData(nameof(AboveTheApplianceValve))]
    public void Unproved_it_is_a_danger(JointPlace place) => Assert.Equal(
        Outcome.Unsafe,
        Judged(RuleIds.DisturbedGasJointProved, $$"""{ "/disturbedJoints": [{ "place": "{{WireNames.Of(place)}}" }], "/tightnessTests": [] }""").Outcome);

    [Theory]
    [MemberData(nameof(AboveTheApplianceValve))]
    public void A_tightness_test_after_the_work_proves_it(JointPlace place) => Assert.Equal(
        Outcome.Pass,
        Judged(RuleIds.DisturbedGasJointProved, $$"""{ "/disturbedJoints": [{ "place": "{{WireNames.Of(place)}}", "leakChecked": true, "leakCheckMethod": "fluid" }] }""").Outcome);

    [Theory]
    [MemberData(nameof(AboveTheApplianceValve))]
    public void A_damaged_seal_in_it_lets_gas_out(JointPlace place) => Assert.Equal(
        Outcome.Unsafe,
        Judged(RuleIds.OtherSeal, $$"""{ "/disturbedJoints": [{ "place": "{{WireNames.Of(place)}}", "condition": "damaged", "renewed": false }] }""").Outcome);

    [Theory]
    [MemberData(nameof(AboveTheApplianceValve))]
    public void Stated_to_carry_no_gas_it_is_taken_at_its_word(JointPlace place) => Assert.Equal(
        Outcome.NotApplicable,
        Judged(RuleIds.DisturbedGasJointProved, $$"""{ "/disturbedJoints": [{ "place": "{{WireNames.Of(place)}}", "carriesGas": false }] }""").Outcome);

    private static Finding Judged(string ruleId, string set) => Assert.Single(RuleSet.AnswersOf(ruleId, RuleSet.EngineOf(ruleId).Evaluate(RuleSet.Example(set))));
}
