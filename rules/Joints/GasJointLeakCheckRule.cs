using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.Joints;

[Name(RuleIds.GasJointLeakCheck), Topic(Topics.Joints), Cites("EN-14291"), CommonPractice]
[Description("A remade gas joint is checked for leaks, and the record says how")]
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
