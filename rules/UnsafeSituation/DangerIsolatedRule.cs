using Findings;
using Kernel;
using Records;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DangerIsolated), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "34"), Cites("IGEM-G-11")]
[Title("A danger that was taken out of use is isolated at a place that the record names")]
[Why("A boiler that is only turned off still stands under gas, and a leak above its valve goes on leaking. Taken out of use counts only where the thing that is dangerous is cut off.")]
[Serves(Part.HandleDanger)]
[Uses(LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare, LimitIds.TightnessTablePipe,
    LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35, LimitIds.PermittedDropEdition3U628,
    LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628, LimitIds.PermittedDropEdition3U1635,
    DeployersTables.PermittedDropEdition4)]
[Coverage(Coverage.MayUnderReport, "whether the place named cuts off what is dangerous is judged on site")]
public sealed class DangerIsolatedRule : DefectRule
{
    protected override bool Concerns(Defect defect) =>
        defect is { Class: DefectClass.AtRisk or DefectClass.ImmediatelyDangerous, Action: DefectAction.TurnedOff or DefectAction.Disconnected };

    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        if (look.Lacks(defect.IsolatedAt, out var place))
            return look.Missing($"the record does not say where the danger was isolated");

        if (new RecordedDefect(look.Subject, defect).IsIsolated(visit))
            return look.Pass($"the danger was isolated: {place}");

        return (place == IsolationPoint.NotIsolated
                ? look.Missing($"the danger is recorded as taken out of use and as not isolated", $"{look.Subject}/isolatedAt")
                : look.Missing($"the danger is recorded as isolated at '{place}', and the record does not show that this cuts off what is dangerous", $"{look.Subject}/isolatedAt"))
            .Warn(Cautions.DangerStands).Advise("Isolate what is dangerous at the nearest place that cuts it off, and record where.");
    }
}
