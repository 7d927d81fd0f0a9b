using Findings;
using Kernel;
using Records;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.AtRiskRecorded), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "34")]
[Title("No defect is recorded as at risk; one that was not put right keeps the record unsafe")]
[Why("At Risk means that what is wrong could endanger someone without any further fault. Such a boiler still lights and heats, so it is soon back in use unless it is put right or turned off and the user knows why.")]
[Serves(Part.HandleDanger)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.CoPpm, LimitIds.FlueGasCo2, LimitIds.FlueGasO2, LimitIds.MaximumRateLoad, LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare, LimitIds.TightnessTablePipe,
    LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35, LimitIds.PermittedDropEdition3U628,
    LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628, LimitIds.PermittedDropEdition3U1635,
    DeployersTables.PermittedDropEdition4)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class AtRiskRecordedRule : DangerousDefectRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        if (classed != DefectClass.AtRisk)
            return look.NotApplicable($"the defect is classed as {classed}");

        var recorded = new RecordedDefect(look.Subject, defect);
        if (!recorded.IsOfThisAppliance)
        {
            return look.Advisory($"the engineer classed as at risk what is not of this boiler: {look.Note(defect.Concerns)}")
                .Warn(Cautions.DangerStands).Advise("See that whoever is responsible for it knows, and that nobody uses it until it is put right.");
        }

        return look.Note(defect.Action) switch
        {
            DefectAction.Rectified when Handling.IsShownRight(recorded, visit) => look.Advisory($"the engineer classed a defect as at risk, put it right and looked at it again")
                .Advise("See at the next visit whether it stayed right."),
            DefectAction.Rectified => Standing(look.Unsafe($"the engineer classed a defect as at risk and put it right, and the record does not show that anybody looked at it again")),
            null => Standing(look.Unsafe($"the engineer classed a defect as at risk, and no action is recorded")
                .AndMissing($"{look.Subject}/action")),
            { } done => Standing(look.Unsafe($"the engineer classed a defect as at risk, and it was not put right; recorded action: {done}")),
        };
    }

    private static Verdict Standing(Verdict verdict) =>
        verdict.Warn(Cautions.DangerStands).Advise("Put it right, or with permission turn the appliance off; if permission is refused have the responsible person sign for it.");
}
