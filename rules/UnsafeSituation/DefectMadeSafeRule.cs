using Findings;
using Kernel;
using Records;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DefectMadeSafe), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "34")]
[Title("A dangerous appliance is put right, disconnected or, where at risk, turned off; after a refusal the record shows what the procedure then asks")]
[Why("Finding a danger protects nobody until it is put right, disconnected or turned off. No customer can be forced to agree, so after a refusal the procedure turns to the gas emergency service or to a signed acceptance.")]
[Serves(Part.HandleDanger)]
[Uses(LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare, LimitIds.TightnessTablePipe,
    LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35, LimitIds.PermittedDropEdition3U628,
    LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628, LimitIds.PermittedDropEdition3U1635,
    DeployersTables.PermittedDropEdition4)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectMadeSafeRule : DangerousDefectRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        look.Note(defect.Permission);
        if (look.Lacks(defect.Action, out var action))
            return look.Missing($"the record does not say what was done about a defect classed as {classed}").Warn(Cautions.DangerStands);

        var mustDisconnect = classed == DefectClass.ImmediatelyDangerous;
        var recorded = new RecordedDefect(look.Subject, defect);
        if (action is DefectAction.Rectified or DefectAction.Disconnected || (action == DefectAction.TurnedOff && (!mustDisconnect || Handling.IsTakenOutOfUse(recorded, finding: null, visit))))
            return Answered(classed, action, recorded, visit, look);

        if (Handling.IsMadeKnownElsewhere(recorded))
            return look.Pass($"a defect classed as {classed} that is not of this boiler was made known to whoever answers for it");

        return (defect.Permission == Consent.Refused ? Refused(defect, mustDisconnect, look)
                : look.Missing($"a defect classed as {classed} was left at '{action}', with no refusal on record; {(mustDisconnect ? "disconnecting" : "turning off")} is the least",
                    defect.Permission is null ? [$"{look.Subject}/permission"] : [$"{look.Subject}/action"]))
            .Warn(Cautions.DangerStands);
    }

    // An appliance that was left in use was not turned off: one of the two is wrong, and the worse is believed.
    private static Verdict Answered(DefectClass classed, DefectAction action, RecordedDefect recorded, Visit visit, Look look)
    {
        var isContradicted = classed == DefectClass.ImmediatelyDangerous && action == DefectAction.Disconnected && recorded.IsOfThisAppliance
            && visit.Record.Appliance.StateOnLeaving == StateOnLeaving.TurnedOff;
        if (action == DefectAction.Rectified || (recorded.IsLeftOff(visit) && !isContradicted))
            return look.Pass($"a defect classed as {classed} was answered: {action}");

        return (look.Lacks(visit.Record.Appliance.StateOnLeaving, out var state)
                ? look.Missing($"the action on a defect classed as {classed} is recorded as {action}, and not how the appliance was left")
                : look.Missing($"the action on a defect classed as {classed} is recorded as {action}, and the appliance as left {state}", "/appliance/stateOnLeaving", $"{look.Subject}/action"))
            .Warn(Cautions.DangerStands).Advise("Make the appliance safe with permission, and record how it was left.");
    }

    private static Verdict Refused(Defect defect, bool mustDisconnect, Look look)
    {
        if (mustDisconnect)
        {
            return look.Lacks(defect.EmergencyReference, out var reference)
                ? look.Missing($"permission to disconnect was refused, and no reference of the gas emergency provider is recorded")
                    .Advise("Call the gas emergency provider, or the supplier of LPG, and record the reference.")
                : look.Pass($"permission to disconnect was refused, and the gas emergency provider was called under {reference}");
        }

        return look.Note(defect.UserSigned) == true
            ? look.Pass($"permission to turn off was refused, and the responsible person signed for it")
            : look.Missing($"permission to turn off was refused, and no signed acceptance of responsibility is recorded", $"{look.Subject}/userSigned")
                .Advise("Have the responsible person sign for leaving the appliance on.");
    }
}
