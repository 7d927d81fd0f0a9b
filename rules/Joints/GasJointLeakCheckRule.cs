using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.GasJointLeakCheck), Topic(Topics.Joints), Cites("EN-14291"), CommonPractice]
[Title("A remade gas joint is checked for leaks, and the record says how")]
[Why("A weep too small to move the gauge still shows as bubbles in leak detection fluid or on a gas detector at the joint. Unless the method is recorded, whoever reads it later cannot tell a real check from a glance.")]
[Serves(Part.GasJoints)]
[Expects("/disturbedJoints")]
[Coverage(Coverage.Full, "each listed joint is judged")]
public sealed class GasJointLeakCheckRule : ComplianceRule<DisturbedJoint>
{
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) => visit.DisturbedGasJoints;

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        if (look.Note(joint.LeakChecked) != true)
        {
            return look.Advisory($"the record shows no leak check of the remade gas joint at the {joint.Place}")
                .Warn(Cautions.EscapingGas).Advise("Check the joint with leak-detection fluid and wipe it off afterwards.");
        }

        return look.Note(joint.LeakCheckMethod) is { } method
            ? look.Pass($"the joint at the {joint.Place} was checked with {method}")
            : look.Advisory($"the joint at the {joint.Place} was leak-checked, and the record does not say how");
    }
}
