using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.LeakFoundBeforeWork), Topic(Topics.Tightness), Cites("GSIUR-1998", "6(6)"), Cites("IGEM-UP-1B")]
[Title("A leak that a tightness test showed before the work, or nobody wrote when, is gone in a test after it that counts")]
[Why("Pipework that was leaking when the engineer arrived goes on leaking unless somebody traces the fault. Good work on the boiler changes nothing there, and only a later test that reaches as far can show the leak gone.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare, LimitIds.TightnessTablePipe,
    LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35, LimitIds.PermittedDropEdition3U628,
    LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628, LimitIds.PermittedDropEdition3U1635,
    DeployersTables.PermittedDropEdition4)]
[Expects("/tightnessTests"), AppliesBy("/disturbedJoints")]
[Coverage(Coverage.Full, "tests before and after the work are compared")]
public sealed class LeakFoundBeforeWorkRule : ComplianceRule<TightnessTest>
{
    // Where no test is demanded and none is recorded, there is nothing that could have shown a leak.
    protected override bool? Applies(Visit visit) => visit.Record.TightnessTests is not null ? true : visit.GasJointsWereDisturbed;

    protected override IEnumerable<Subject<TightnessTest>>? Subjects(Visit visit) =>
        Kernel.Subjects.Of("/tightnessTests", visit.Record.TightnessTests)?.Where(test => test.Value.Stage != WorkStage.AfterWork);

    protected override Verdict Assess(TightnessTest test, Visit visit, Look look)
    {
        if (visit.TestsAfterWork?.Any(later => TightnessProof.ShowsTight(later.Pointer, visit, []) == true && TightnessProof.SawAsMuch(later.Value, test)) == true)
            return look.Pass($"whatever this test showed, one after the work that saw as much shows the installation tight");

        var verdict = TightnessResultRule.WhatItShows(test, visit, look);

        // With the gas shut off and the emergency provider called nobody can test again, and nobody need.
        return verdict.Outcome == Outcome.Unsafe && !visit.EscapeIsMadeSafe() ? verdict.AndMissing("/tightnessTests") : verdict;
    }
}
