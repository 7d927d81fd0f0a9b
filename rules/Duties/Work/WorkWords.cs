using Records;
using Visits;

namespace Rules.Duties.Work;

/// <summary>What the duties ask of a visit's work.</summary>
internal static class WorkWords
{
    /// <summary>
    /// With burner, fan or exchanger a gas joint is opened: on premix and fan-to-burner boilers, unless the record states that none was, which
    /// no part of the gas path bears out. A burner that is not recorded is one of them, unless the boiler neither condenses nor has a fan.
    /// </summary>
    public static bool GasComesWithTheFireSide(this Visit visit)
    {
        var isOneOfThem = visit.Appliance.BurnerKind is { } kind
            ? kind is BurnerKind.Premix or BurnerKind.FanToBurner
            : !(visit.Appliance.Condensing == false && visit.Appliance.FlueType is FlueType.RoomSealedNatural or FlueType.OpenFlued);
        return isOneOfThem && !(visit.Record.Work?.NoGasJointOpened == true && !visit.FittedPartsOfTheGasPath());
    }

    /// <summary>A part was fitted without which no gas joint stays closed.</summary>
    public static bool FittedPartsOfTheGasPath(this Visit visit) => visit.Fitted(
        PartKind.GasValve, PartKind.Injector, PartKind.GasSeal, PartKind.Regulator, PartKind.Meter, PartKind.Pipework);

    /// <summary>A part of one of these kinds was fitted.</summary>
    public static bool Fitted(this Visit visit, params PartKind[] kinds)
    {
        foreach (var part in visit.Record.PartsFitted ?? [])
        {
            if (part.Kind is { } kind && kinds.Contains(kind))
                return true;
        }

        return false;
    }

    /// <summary>
    /// Of the combustion circuit no more was worked on than an electrode or a seal outside the chamber. That the circuit was worked on, and
    /// nothing of it that would show how far, is no such thing.
    /// </summary>
    public static bool LeftTheChamberShut(this Visit visit)
    {
        var wasOpened = visit.OpenedTheExchanger() || visit.Fitted(PartKind.Burner, PartKind.Fan, PartKind.HeatExchanger)
            || visit.DisturbedJoints?.Any(joint => joint.Value.IsOfTheCombustionCircuit() && joint.Value.Place != JointPlace.Electrode) == true;
        return !wasOpened && (visit.Record.Burner?.ElectrodeGapMm is not null || visit.Fitted(PartKind.Electrode, PartKind.CombustionSeal)
            || visit.DisturbedJoints?.Any(joint => joint.Value.Place == JointPlace.Electrode) == true);
    }

    /// <summary>A gas pressure was read, so that a test point was opened.</summary>
    public static bool ReadAPressure(this Visit visit) => visit.Record.GasSupply is { } supply
        && (supply.ApplianceInletMbar ?? supply.BurnerMbar ?? supply.MeterOperatingMbar ?? supply.MeterStandingMbar) is not null;

    /// <summary>A pressure was read at a nipple, or may have been; the maker's own procedure needs none.</summary>
    public static bool OpenedANipple(this Visit visit) => visit.Record.GasSupply?.PressureBy != PressureReadBy.MakersProcedure;

    /// <summary>Tightness was tested, whenever and for whatever.</summary>
    public static bool TestedTightness(this Visit visit) => visit.TightnessTests is { Count: > 0 };

    /// <summary>A flame supervision device that works by a thermocouple had it renewed.</summary>
    public static bool FittedAThermocouple(this Visit visit) => visit.Fitted(PartKind.Thermocouple);

    /// <summary>
    /// A landlord's check: of premises that are let, or may be, and under that job type; or a service of a let boiler whose paper names the landlord.
    /// </summary>
    public static bool IsALandlordsCheck(this Visit visit) => !visit.HadNoAccess && visit.IsUnderLandlordDuty != false
        && (visit.Record.JobType == JobType.LandlordCheck || (visit.IsAnnualService && visit.IsUnderLandlordDuty == true));

    /// <summary>The boiler, or something of it, was only disconnected.</summary>
    public static bool? LeavesAGaswayOpen(this Visit visit) =>
        visit.Appliance.StateOnLeaving == StateOnLeaving.Disconnected || visit.IsRemoval() ? true : visit.FittedANewBoiler & visit.IsLeftWithoutGas();

    public static bool IsRemoval(this Visit visit) => visit.Record.Work?.Kind == WorkKind.Removal;

    /// <summary>A repair that does not say what was worked on, not even that nothing was.</summary>
    public static bool IsARepairWithoutWord(this Visit visit) => visit.Record.JobType == JobType.Repair && !visit.HadNoAccess && visit.Record.Work?.Touched is null;

    /// <summary>The flue gas was read.</summary>
    public static bool ReadTheFlue(this Visit visit) => visit.Readings is { Count: > 0 };

    /// <summary>Meter, regulator or the meter's union was worked on.</summary>
    public static bool WorkedOnTheMeter(this Visit visit) => visit.Fitted(PartKind.Meter, PartKind.Regulator) || visit.Record.Work?.Kind == WorkKind.MeterWork
        || visit.DisturbedJoints?.Any(joint => joint.Value.Place == JointPlace.MeterUnion) == true;

    /// <summary>The fire side was opened or cleaned over the trap.</summary>
    public static bool OpenedTheExchanger(this Visit visit) =>
        visit.Record.HeatExchanger is { TopPlateRemoved: true } or { Cleaned: true } || visit.Fitted(PartKind.HeatExchanger);

    /// <summary>A gas valve or an injector was fitted.</summary>
    public static bool FittedAGasValveOrInjector(this Visit visit) => visit.Fitted(PartKind.GasValve, PartKind.Injector);

    /// <summary>Carbon monoxide was in the room before the work.</summary>
    public static bool HadRaisedRoomAir(this Visit visit) => visit.Record.AmbientCo?.BeforePpm > 0;

    /// <summary>A carbon monoxide alarm sounded.</summary>
    public static bool AlarmHadSounded(this Visit visit) => visit.Record.CoAlarm?.ActivatedSinceLastVisit == true;

    /// <summary>A system that the record states to be open-vented; one that it does not state may be sealed.</summary>
    public static bool IsOpenVented(this Visit visit) => visit.Record.Water?.SystemType == WaterSystemType.OpenVented;

    /// <summary>Left off for want of gas. A word of it beside a boiler in use, or beside no state, takes nothing from what is owed.</summary>
    public static bool IsLeftWithoutGas(this Visit visit) =>
        visit.IsLeftOutOfUse && (visit.Appliance.LeftOffBecause == LeftOffReason.NoGas || visit.Record.Work?.Result == WorkResult.GasOff);

    /// <summary>A new boiler whose installation was broken off, and which was left off.</summary>
    public static bool IsAnInstallationPutOff(this Visit visit) =>
        visit.Record.JobType == JobType.Commissioning && visit.IsRunningPutOff && visit.Record.Work?.Result is not (null or WorkResult.CarriedOut);

    /// <summary>The record speaks of an escape: it has the part, and does not say there that none was reported and no more.</summary>
    public static bool SpeaksOfAnEscape(this Visit visit) => visit.Record.Escape is not (null
        or { Reported: false, GasIsolated: not true, IsolatedAt: null or IsolationPoint.NotIsolated, Reference: null or "", ReportedAt: null, Told: null or { Count: 0 } });

    /// <summary>A repair, of which the parts that were fitted say what was worked on.</summary>
    public static bool IsARepair(this Visit visit) => visit.Record.JobType == JobType.Repair && !visit.HadNoAccess;

    /// <summary>A boiler, new or used, was put in.</summary>
    public static bool IsAnInstallation(this Visit visit) => visit.Record.JobType == JobType.Commissioning && !visit.HadNoAccess && !visit.IsAnInstallationPutOff();

    /// <summary>Gas pipework was fitted.</summary>
    public static bool FittedPipework(this Visit visit) => visit.Fitted(PartKind.Pipework) || visit.Record.Work?.Kind == WorkKind.Pipework;

    /// <summary>After an escape the gas is on again: nobody refused to have it off, and the boiler was left in use.</summary>
    public static bool RestoredTheGas(this Visit visit) => visit.Record.Escape is { GasIsolated: true } && visit.Appliance.StateOnLeaving == StateOnLeaving.InUse
        && !visit.RecordedDefects.Any(defect => defect.IsRefusalDealtWith);

    /// <summary>A gas pipe or the meter was parted, or must have been.</summary>
    public static bool PartedAPipe(this Visit visit) =>
        visit.Fitted(PartKind.Meter, PartKind.Pipework) || visit.Record.Work?.Kind is WorkKind.MeterWork or WorkKind.Pipework or WorkKind.Removal;
}
