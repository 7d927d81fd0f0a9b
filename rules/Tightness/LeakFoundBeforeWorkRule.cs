using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.Tightness;

[Name(RuleIds.LeakFoundBeforeWork), Topic(Topics.Tightness), Cites("GSIUR-1998", "6(6)"), Cites("IGEM-UP-1B")]
[Description("A leak that a tightness test showed before the work, or nobody wrote when, is gone in a test after it that counts")]
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
