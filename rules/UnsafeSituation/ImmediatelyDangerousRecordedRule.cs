using Findings;
using Kernel;
using Records;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.ImmediatelyDangerousRecorded), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "34")]
[Title("No defect is recorded as immediately dangerous; one that was not put right and shown right keeps the record unsafe")]
[Why("Immediately Dangerous means that life or property is in danger if the appliance is used or left connected. Only work that cured it, and a later look that shows so, takes that back; the cause may still have to be reported.")]
[Serves(Part.HandleDanger)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.CoPpm, LimitIds.FlueGasCo2, LimitIds.FlueGasO2, LimitIds.MaximumRateLoad, LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare, LimitIds.TightnessTablePipe,
    LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35, LimitIds.PermittedDropEdition3U628,
    LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628, LimitIds.PermittedDropEdition3U1635,
    DeployersTables.PermittedDropEdition4)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class ImmediatelyDangerousRecordedRule : DangerousDefectRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        var action = look.Note(defect.Action);
        if (classed != DefectClass.ImmediatelyDangerous)
            return look.NotApplicable($"the defect is classed as {classed}");

        if (action == DefectAction.Rectified && Handling.IsShownRight(new RecordedDefect(look.Subject, defect), visit))
        {
            return look.Advisory($"the engineer classed a defect as immediately dangerous, put it right and looked at it again")
                .Advise("See at the next visit whether it stayed right.");
        }

        return (action is { } done
                ? look.Unsafe($"the engineer classed a defect as immediately dangerous; recorded action: {done}", ExpectedClass.ImmediatelyDangerous)
                : look.Unsafe($"the engineer classed a defect as immediately dangerous, and no action is recorded", ExpectedClass.ImmediatelyDangerous)
                    .AndMissing($"{look.Subject}/action"))
            .Warn(Cautions.DangerStands).Advise("Put it right, or with permission disconnect the appliance from the gas; if permission is refused call the gas emergency provider.");
    }
}
