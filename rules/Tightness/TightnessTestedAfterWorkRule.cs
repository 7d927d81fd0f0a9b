using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessTestedAfterWork), Topic(Topics.Tightness), Cites("GSIUR-1998", "6(6)"), Cites("IGEM-UP-1B")]
[Title("After work that disturbed a gas joint or connected a new boiler, the installation is tested for tightness")]
[Why("Every gas joint that was opened may have been left leaking, and the boiler will light all the same. Regulation 6(6) has the installation tested for gas tightness immediately after work that might affect it.")]
[Serves(Part.Tightness)]
[AppliesBy("/disturbedJoints")]
[Coverage(Coverage.Full, "listed joints and tests are compared")]
public sealed class TightnessTestedAfterWorkRule : VisitRule
{
    protected override string SubjectPointer => "/tightnessTests";

    protected override bool? Applies(Visit visit) => visit.IsNewBoiler == false ? visit.GasJointsWereDisturbed : true;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.TestsAfterWork?.Any(test => test.Value.Stage == WorkStage.AfterWork) == true)
            return look.Pass($"a tightness test after the work is recorded");

        // No boiler is connected without making a gas joint, whatever joints are listed.
        if (visit.GasJointsWereDisturbed != true && look.Lacks(visit.Record.Commissioning?.NewBoiler, out _))
            return look.Missing($"no tightness test after the work is recorded, and whether there must be one hangs on whether the boiler is new");

        return look.Missing(
                visit.GasJointsWereDisturbed == true
                    ? (FormattableString)$"a gas joint was disturbed, and no tightness test after the work is recorded"
                    : $"a new boiler was connected, and no tightness test after the work is recorded",
                "/tightnessTests")
            .Warn(Cautions.EscapingGas).Advise("Test the installation for tightness, appliance valves open, before the gas is left on.");
    }
}
