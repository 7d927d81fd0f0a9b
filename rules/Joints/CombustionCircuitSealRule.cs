using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.CombustionCircuitSeal), Topic(Topics.Joints), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Title("A disturbed seal of the combustion circuit goes back new or in good condition")]
[Why("The fan can hold the chamber above the pressure of the case, so a damaged seal blows hot flue gas out. It can scorch case and wiring, and a boiler that takes in its own combustion products makes carbon monoxide (CO).")]
[Serves(Part.CombustionSeals)]
[Expects("/disturbedJoints")]
[Coverage(Coverage.Full, "each listed joint is judged")]
public sealed class CombustionCircuitSealRule : ComplianceRule<DisturbedJoint>
{
    // A joint that the record does not place may be one of the circuit.
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) =>
        visit.DisturbedJoints?.Where(joint => joint.Value.IsOfTheCombustionCircuit() || joint.Value.Place is null);

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        look.Note(joint.Renewed);
        if (look.Lacks(joint.Place, out var place) | look.Lacks(joint.Condition, out var condition))
            return look.Missing();

        return condition switch
        {
            SealCondition.Good => look.Pass($"the {place} seal that went back is in good condition"),
            SealCondition.Damaged => look.Unsafe($"the {place} seal that went back is damaged: products of combustion can leave the circuit there")
                .Warn(Cautions.CarbonMonoxide)
                .Advise("Fit a new seal of the maker's part number and size for this output, then check the joint and the case seal with the fan running."),
            _ => look.Missing($"nobody knows the condition of the {place} seal that went back", $"{look.Subject}/condition")
                .Warn(Cautions.CarbonMonoxide).Advise("Look at the seal, or fit a new one."),
        };
    }
}
