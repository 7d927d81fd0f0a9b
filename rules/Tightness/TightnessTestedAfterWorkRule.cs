using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.TightnessTestedAfterWork), Topic(Topics.Tightness), Cites("GSIUR-1998", "6(6)"), Cites("IGEM-UP-1B")]
[Description("After work that disturbed a gas joint, the installation is tested for tightness")]
[AppliesBy("/disturbedJoints")]
[Coverage(Coverage.Full, "listed joints and tests are compared")]
public sealed class TightnessTestedAfterWorkRule : VisitRule
{
    protected override string SubjectPointer => "/tightnessTests";

    protected override bool? Applies(Visit visit) => visit.GasJointsWereDisturbed;

    protected override Verdict Assess(Visit visit, Look look) =>
        visit.TestsAfterWork?.Any(test => test.Value.Stage == WorkStage.AfterWork) == true
            ? look.Pass($"a tightness test after the work is recorded")
            : look.Missing($"a gas joint was disturbed, and no tightness test after the work is recorded", "/tightnessTests")
                .Warn(Cautions.EscapingGas).Advise("Test the installation for tightness, appliance valves open, before the gas is left on.");
}
