using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.CombustionJointChecked), Topic(Topics.Joints), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Title("A remade joint of the combustion circuit is checked for escaping products")]
[Why("Leaking combustion products have no colour, and the boiler goes on firing as if nothing were wrong. Only with the burner alight and the fan running is the remade joint under the pressure it has to hold.")]
[Serves(Part.CombustionSeals)]
[Expects("/disturbedJoints")]
[Coverage(Coverage.Full, "each listed joint is judged")]
public sealed class CombustionJointCheckedRule : ComplianceRule<DisturbedJoint>
{
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) =>
        visit.DisturbedJoints?.Where(joint => joint.Value.IsOfTheCombustionCircuit() || joint.Value.Place is null);

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        if (look.Lacks(joint.Place, out var place))
            return look.Missing();

        return look.Note(joint.LeakChecked) == true
            ? look.Pass($"the remade {place} joint was checked")
            : look.Advisory($"the record shows no check of the remade {place} joint")
                .Warn(Cautions.CarbonMonoxide).Advise("Check the joint for escaping products with the burner alight and the fan running.");
    }
}
