using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.OtherSeal), Topic(Topics.Joints), CommonPractice]
[Title("A disturbed seal outside the combustion circuit goes back new or in good condition")]
[Why("Once hardened or split, an O-ring or washer seldom seals as it did before. Outside the fire side it drips on electrics, draws false air or, on a gas joint, lets gas out, and the service ends in a call-out or worse.")]
[Serves(Part.CombustionSeals)]
[Serves(Part.GasJoints)]
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
