using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.GasValveUnionSeal), Topic(Topics.Joints), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Description("A gas-valve union that was disturbed goes back with a new sealing washer")]
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

        return renewed
            ? look.Pass($"the seal of the {place} union was renewed")
            : look.Advisory($"the seal of the {place} union was put back used")
                .Warn(Cautions.EscapingGas)
                .Advise("Fit a new sealing washer of the maker's part number and size for this output, then prove the joint tight.");
    }
}
