using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.GasValveUnionSeal), Topic(Topics.Joints), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Title("A gas-valve union that was disturbed goes back with a new, sound sealing washer")]
[Why("A used washer has taken the shape of the faces it was squeezed between and may not seal a second time. Gas reaches the inlet union day and night and the outlet whenever the burner is alight, so a weep there never stops for long.")]
[Serves(Part.GasJoints)]
[Expects("/disturbedJoints")]
[Coverage(Coverage.MayOverReport, "some unions seal without a washer")]
public sealed class GasValveUnionSealRule : ComplianceRule<DisturbedJoint>
{
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) =>
        visit.DisturbedJoints?.Where(joint => joint.Value.IsGasValveUnion() || joint.Value.Place is null);

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        if (look.Lacks(joint.Place, out var place) | look.Lacks(joint.Renewed, out var renewed))
            return look.Missing();

        // A new washer that nobody looked at, or that is damaged, is a slip of the pen or a leak to come; a damaged one that went back used is one.
        if (renewed && look.Note(joint.Condition) is SealCondition.Damaged or SealCondition.Unknown)
        {
            return look.Missing($"the seal of the {place} union is recorded as new and its condition as {joint.Condition}", $"{look.Subject}/condition")
                .Warn(Cautions.EscapingGas).Advise("Look at the washer, or fit another new one, then prove the joint tight.");
        }

        if (look.Note(joint.Condition) == SealCondition.Damaged)
        {
            return look.Unsafe($"the seal of the {place} union was put back used, and it is damaged: gas can escape there").Warn(Cautions.EscapingGas)
                .Advise("Fit a new sealing washer of the maker's part number and size for this output, then prove the joint tight.");
        }

        return renewed
            ? look.Pass($"the seal of the {place} union was renewed")
            : look.Advisory($"the seal of the {place} union was put back used")
                .Warn(Cautions.EscapingGas)
                .Advise("Fit a new sealing washer of the maker's part number and size for this output, then prove the joint tight.");
    }
}
