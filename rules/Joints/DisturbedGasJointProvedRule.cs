using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.DisturbedGasJointProved), Topic(Topics.Joints), Cites("GSIUR-1998", "6(6)"), Cites("IGEM-UP-1B")]
[Description("A gas joint that was disturbed is proved tight after the work, in a way that can see it")]
[Expects("/disturbedJoints")]
public sealed class DisturbedGasJointProvedRule : ComplianceRule<DisturbedJoint>
{
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) => visit.DisturbedGasJoints;

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        var isTested = visit.TestsAfterWork?.Any(test => test.Value.Stage == WorkStage.AfterWork) == true;
        var isChecked = look.Note(joint.LeakChecked) == true;
        if (!isTested && !isChecked)
        {
            return look.Unsafe($"the gas joint at {joint.Place} was disturbed and neither tested for tightness afterwards nor leak-checked")
                .AndMissing("/tightnessTests", $"{look.Subject}/leakChecked")
                .Warn(Cautions.EscapingGas)
                .Advise("Test for tightness with the appliance valve open, and check the joint with leak-detection fluid; behind the gas valve, with the burner alight.");
        }

        // A tightness test is made with the gas valve shut: it cannot see what lies behind.
        if (joint.IsBehindTheGasValve())
        {
            if (look.Lacks(joint.LeakChecked, out _) | look.Lacks(joint.BurnerAlight, out var alight))
                return look.Missing($"no tightness test can see the joint at {joint.Place}, since the gas valve is shut; it needs a leak check with the burner alight");
            if (!isChecked || !alight)
                return look.Missing($"the joint at {joint.Place} was not leak-checked with the burner alight, the only proof for it", $"{look.Subject}/burnerAlight");
            return look.Pass($"the joint at {joint.Place} was leak-checked with the burner alight");
        }

        return isTested
            ? look.Pass($"the joint at {joint.Place} was tested for tightness after the work")
            : look.Missing($"the joint at {joint.Place} was leak-checked, and the tightness test that must follow work on a gas fitting is not recorded", "/tightnessTests");
    }
}
