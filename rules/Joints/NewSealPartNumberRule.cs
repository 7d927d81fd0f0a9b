using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.NewSealPartNumber), Topic(Topics.Joints), CommonPractice]
[Title("A new seal is recorded with its part number")]
[Why("Boilers of one range can take seals of different size by output, and a near fit may look right and still leak. Without the part number nobody can tell later which seal went in.")]
[Serves(Part.WhereRecorded, AtMost = Weight.Should)]
[Expects("/disturbedJoints")]
[Coverage(Coverage.Full, "each listed joint is judged")]
public sealed class NewSealPartNumberRule : ComplianceRule<DisturbedJoint>
{
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) =>
        visit.DisturbedJoints?.Where(joint => joint.Value.Renewed != false);

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        if (look.Lacks(joint.Renewed, out _))
            return look.Missing($"the record does not say whether the seal is a new one");

        return look.Lacks(joint.PartNumber, out var number)
            ? look.Missing($"the new seal is recorded without a part number")
                .Warn("Seals of one range differ in size by output, and the wrong one can look right.")
                .Advise("Compare the part with the maker's list for this output and record its number.")
            : look.Pass($"the new seal is part {number}");
    }
}
