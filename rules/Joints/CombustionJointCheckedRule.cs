using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.CombustionJointChecked), Topic(Topics.Joints), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Description("A remade joint of the combustion circuit is checked for escaping products")]
[Expects("/disturbedJoints")]
public sealed class CombustionJointCheckedRule : ComplianceRule<DisturbedJoint>
{
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) =>
        visit.DisturbedJoints?.Where(joint => joint.Value.IsOfTheCombustionCircuit());

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look) => look.Note(joint.LeakChecked) == true
        ? look.Pass($"the remade {joint.Place} joint was checked")
        : look.Advisory($"the record shows no check of the remade {joint.Place} joint")
            .Warn(Cautions.CarbonMonoxide).Advise("Check the joint for escaping products with the burner alight and the fan running.");
}
