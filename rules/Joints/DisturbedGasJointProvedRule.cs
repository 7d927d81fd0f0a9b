using Findings;
using Kernel;
using Records;
using Rules.Tightness;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.DisturbedGasJointProved), Topic(Topics.Joints), Cites("GSIUR-1998", "6(6)"), Cites("IGEM-UP-1B")]
[Title("A gas joint that was disturbed is proved tight after the work, in a way that can see it")]
[Why("A tightness test is made with the gas valve shut, so a leak downstream of that valve never shows on the gauge. A joint opened and not proved in a way that reaches it can fill the case with gas when the burner next fires.")]
[Serves(Part.GasJoints)]
[Uses(LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare, LimitIds.TightnessTablePipe,
    LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35, LimitIds.PermittedDropEdition3U628,
    LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628, LimitIds.PermittedDropEdition3U1635,
    DeployersTables.PermittedDropEdition4)]
[Expects("/disturbedJoints")]
[Coverage(Coverage.Full, "each listed joint is held against the proof that can see it")]
public sealed class DisturbedGasJointProvedRule : ComplianceRule<DisturbedJoint>
{
    protected override IEnumerable<Subject<DisturbedJoint>>? Subjects(Visit visit) => visit.DisturbedGasJoints;

    protected override Verdict Assess(DisturbedJoint joint, Visit visit, Look look)
    {
        // A tightness test is made with the gas valve shut: it cannot see what lies behind.
        var verdict = joint.IsBehindTheGasValve() ? BehindTheValve(joint, visit, look) : BeforeTheValve(joint, visit, look);

        // Where a leak was left to the emergency provider with the gas off, nothing can be proved today.
        if (!verdict.IsProblem || !visit.IsLeftOutOfUse || !visit.EscapeIsMadeSafe() || !TightnessProof.LeakStands(visit))
            return verdict;

        look.Note(visit.Record.Escape?.GasIsolated);
        look.Note(visit.Record.Escape?.Reference);
        return look.Advisory($"the joint at the {joint.Place} was disturbed and is not proved: the installation leaks, the gas is shut off and the emergency provider was called")
            .Warn(Cautions.EscapingGas).Advise("Prove the joint before the gas is left on.");
    }

    private static Verdict BehindTheValve(DisturbedJoint joint, Visit visit, Look look)
    {
        var isTested = (visit.TestsAfterWork ?? []).Aggregate((bool?)false, (proved, test) => proved | TightnessProof.ShowsTight(test.Pointer, visit, []));
        if (isTested == false && joint.LeakChecked != true)
            return Unproved(joint, look);

        // A joint that nobody placed may lie above the valve that was shut; and while it is not known what a test showed, it may have shown a leak.
        if (joint.Place is not (null or JointPlace.Other) && (isTested is not null || joint.LeakChecked == true) && joint is not { LeakChecked: true, BurnerAlight: true }
            && visit.ApplianceValveIsLeftShut() && (joint.LeakChecked != false || visit.SaysWhereGasWasShut()))
        {
            look.Note(visit.Record.Appliance.StateOnLeaving);
            look.Note(joint.LeakChecked);
            return look.Advisory($"the joint at the {joint.Place} can be proved only with the burner alight, and the boiler was left off with its gas shut")
                .Warn(Cautions.EscapingGas).Advise("Leak-check the joint with the burner alight before the boiler is used again.");
        }

        if (joint.LeakChecked == false)
        {
            return look.Unsafe($"the joint at the {joint.Place} was disturbed and not leak-checked, and no tightness test can see it, since the gas valve is shut")
                .AndMissing($"{look.Subject}/leakChecked").Warn(Cautions.EscapingGas).Advise("Check the joint with leak-detection fluid while the burner is alight.");
        }

        if (look.Lacks(joint.LeakChecked, out var isChecked) | look.Lacks(joint.BurnerAlight, out var alight))
            return look.Missing($"no tightness test can see the joint at the {joint.Place}, since the gas valve is shut; it needs a leak check with the burner alight");

        return isChecked && alight
            ? look.Pass($"the joint at the {joint.Place} was leak-checked with the burner alight")
            : look.Missing($"the joint at the {joint.Place} was not leak-checked with the burner alight, the only proof for it",
                $"{look.Subject}/{(isChecked ? "burnerAlight" : "leakChecked")}").Warn(Cautions.EscapingGas);
    }

    private static Verdict BeforeTheValve(DisturbedJoint joint, Visit visit, Look look)
    {
        List<string> gaps = [];
        var isTested = (visit.TestsAfterWork ?? []).Aggregate((bool?)false, (proved, test) => proved | Sees(joint, test, visit, gaps));
        if (isTested == true)
        {
            return joint.IsCapped(visit)
                ? look.Pass($"the joint at the {joint.Place} was tested for tightness after the work, with the boiler left off")
                : look.Pass($"the joint at the {joint.Place} was tested for tightness after the work, with the appliance connected and its valve open");
        }

        var isChecked = look.Note(joint.LeakChecked) == true;
        if (isTested == false && !isChecked)
            return Unproved(joint, look);

        if (isTested is null)
            return look.Missing($"the tightness test after the work does not yet prove the joint at the {joint.Place}: the record does not say enough of it", gaps);

        var counts = visit.TestsAfterWork?.Any(test => TightnessProof.ShowsTight(test.Pointer, visit, []) == true) == true;
        return look.Missing(
            counts
                ? (FormattableString)$"the joint at the {joint.Place} was leak-checked, and the tightness test after the work did not see it: that needs the appliance connected and its valve open"
                : $"the joint at the {joint.Place} was leak-checked, and no tightness test after the work that counts is recorded, which must follow work on a gas fitting",
            "/tightnessTests");
    }

    /// <summary>
    /// The test shows tight whatever it sees, and with the appliance connected and its valve open it sees the joint. One to the nearest valve,
    /// without the appliance, sees a joint that was left capped.
    /// </summary>
    private static bool? Sees(DisturbedJoint joint, Subject<TightnessTest> test, Visit visit, List<string> gaps)
    {
        if (joint.IsCapped(visit) && test.Value.AppliancesConnected == false)
            return TightnessProof.ShowsTight(test.Pointer, visit, gaps);

        var known = TightnessProof.ShowsTight(test.Pointer, visit, gaps) & test.Value.AppliancesConnected & test.Value.ApplianceValvesOpen;
        if (known is null && test.Value.AppliancesConnected is null)
            gaps.Add($"{test.Pointer}/appliancesConnected");
        if (known is null && test.Value.ApplianceValvesOpen is null)
            gaps.Add($"{test.Pointer}/applianceValvesOpen");
        return known;
    }

    // A gas-valve union without gas is none: the place or the gas is recorded wrongly, and that is asked before it is called a danger.
    private static Verdict Unproved(DisturbedJoint joint, Look look) => look.Note(joint.CarriesGas) == false
        ? look.Missing($"the joint at the {joint.Place} is recorded as carrying no gas, which no union of a gas valve does, and nothing proves it tight", $"{look.Subject}/carriesGas")
            .Warn(Cautions.EscapingGas).Advise("Record the place or the gas of the joint again; a gas joint is tested and leak-checked.")
        : look.Unsafe($"the gas joint at the {joint.Place} was disturbed, and neither a tightness test that counts nor a leak check followed")
            .AndMissing("/tightnessTests", $"{look.Subject}/leakChecked")
            .Warn(Cautions.EscapingGas)
            .Advise("Test for tightness with the appliance valve open, and check the joint with leak-detection fluid; behind the gas valve, with the burner alight.");
}
