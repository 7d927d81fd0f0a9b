using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.Joints;

[Name(RuleIds.OtherSeal), Topic(Topics.Joints), CommonPractice]
[Description("A disturbed seal outside the combustion circuit goes back new or in good condition")]
[Expects("/disturbedJoints")]
[Coverage(Coverage.Full, "each listed joint is judged")]
public sealed class OtherSealRule : ComplianceRule<DisturbedJoint>
{
    // Gas-valve unions have a rule of their own: their washers are never used again.
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) =>
        visit.DisturbedJoints?.Where(joint => !joint.Value.IsGasValveUnion() && !joint.Value.IsOfTheCombustionCircuit());

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        look.Note(joint.Renewed);
        if (look.Lacks(joint.Place, out var place) | look.Lacks(joint.Condition, out var condition))
            return look.Missing();

        // What holds for a washer of the gas valve holds for any gas joint: a damaged one lets gas out, and a new one is not damaged.
        if (condition == SealCondition.Damaged && (look.Note(joint.CarriesGas) ?? joint.IsAboveTheApplianceValve()))
        {
            return (joint.Renewed == true
                    ? look.Missing($"the seal of the {place} gas joint is recorded as new and as damaged", $"{look.Subject}/condition")
                    : look.Unsafe($"the seal of the {place} gas joint that went back is damaged: gas can escape there"))
                .Warn(Cautions.EscapingGas).Advise("Fit a new seal of the maker's part number, then prove the joint tight.");
        }

        return condition == SealCondition.Good
            ? look.Pass($"the {place} seal that went back is in good condition")
            : look.Advisory($"the condition of the {place} seal that went back is {condition}")
                .Warn(Cautions.MakerDecides).Advise("Fit a new seal of the maker's part number.");
    }
}
