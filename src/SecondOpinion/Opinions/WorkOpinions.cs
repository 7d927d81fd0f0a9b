using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

/// <summary>What the record says of the work itself: whether that agrees with the rest of it, and what the law asks of the gas that was parted, left or restored.</summary>
internal static class WorkOpinions
{
    private const string NotDone = "/work/notDone";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("appliances-relit", c => If(IsRelightOwed(c), "/work/relit", () => Yes(c.Record.Work?.Relit, no: Outcome.Missing))),
        ("carried-out-agrees", c => At("/work/result", c.Record.Work is { Result: WorkResult.CarriedOut, NotDone: not null }, () => Agrees(!IsMustLeftUndone(c)))),
        ("gasways-sealed", c => c.Record.Work?.GaswaysSealed == false
            ? Immediately(On("/work/gaswaysSealed", Outcome.Unsafe))
            : If(IsGaswayLeft(c), "/work/gaswaysSealed", () => Yes(c.Record.Work?.GaswaysSealed))),
        ("installation-purged", c => If(IsPurgeOwed(c), "/work/purged", () => Yes(c.Record.Work?.Purged, no: Outcome.Missing))),
        ("no-access-recorded", c => If(c.SaysNothingReached(), "/work", () =>
            Given(c.Record.Work!.Tried) && Given(c.Record.Work.LeftBehind) ? Outcome.Pass : Outcome.Missing)),
        ("no-gas-joint-opened-agrees", c => At("/work/noGasJointOpened", c.Record.Work?.NoGasJointOpened is not null, () =>
            Agrees(!(c.Record.Work!.NoGasJointOpened == true && IsGasJointOpened(c))))),
        ("reason-agrees-with-record", c => c.Record.Work?.NotDone is null
            ? On("", Outcome.NotApplicable)
            : Each(c.Record.Work.NotDone, NotDone, reason => Reason(c, reason))),
        ("result-agrees-with-record", c => At("/work/result", c.SaysNothingReached() || c.Record.Work?.Result == WorkResult.GasOff, () => Agrees(!IsResultDenied(c)))),
        ("result-agrees-with-state", c => At("/appliance/stateOnLeaving", IsBrokenOff(c), () =>
            Agrees(c.IsLeftOff() || c.Record.Defects?.Any(IsRefusalDealtWith) == true))),
        ("stop-named", c => If(c.Record.Work?.Result == WorkResult.StoppedForDanger, "/defects", () => Agrees(c.Record.Defects?.Count > 0))),
        ("touched-stated", c => If(c.Record.JobType is JobType.AnnualService or JobType.Repair && !IsNothingReached(c), "/work/touched", () =>
            Agrees(c.IsAnnualService() ? c.Record.Work is not { Result: null or WorkResult.CarriedOut, Touched: [] } : c.Record.Work?.Touched is not null))),
    ];

    private static bool HasJointAtMeter(Case c) => c.Record.DisturbedJoints?.Any(joint => joint.Place == JointPlace.MeterUnion) == true;

    /// <summary>Air gets into what is parted at the meter, and into every pipe that is new; of a boiler without gas there is nothing to purge yet.</summary>
    private static bool? IsPurgeOwed(Case c) =>
        HasJointAtMeter(c) || c.IsFitted(PartKind.Meter, PartKind.Regulator, PartKind.Pipework) || c.Record.Work?.Kind is WorkKind.MeterWork or WorkKind.Pipework
            ? true
            : And(!c.IsLeftWithoutGas(), c.IsNewBoiler());

    private static bool IsRelightOwed(Case c) =>
        HasJointAtMeter(c) || c.IsFitted(PartKind.Meter, PartKind.Regulator) || c.Record.Work?.Kind == WorkKind.MeterWork
        || (IsEscapeRecorded(c) && c.Record.Appliance.StateOnLeaving == StateOnLeaving.InUse);

    private static bool IsEscapeRecorded(Case c) => c.Record.Escape is { Reported: true } or { GasIsolated: true } || c.Record.Work?.Kind == WorkKind.Escape;

    private static bool? IsGaswayLeft(Case c) =>
        c.Record.Appliance.StateOnLeaving == StateOnLeaving.Disconnected || c.Record.Work?.Kind == WorkKind.Removal ? true : And(c.IsLeftWithoutGas(), c.IsNewBoiler());

    private static bool IsGasJointOpened(Case c) =>
        c.Record.PartsFitted?.Any(part => Facts.IsOfGas(part.Kind)) == true || c.Record.DisturbedJoints?.Any(JointsOpinions.CarriesGas) == true;

    /// <summary>Nothing reached, beside what only somebody at the boiler can have done; no gas, beside a flame.</summary>
    private static bool IsResultDenied(Case c) =>
        c.SaysNothingReached() ? HasTraces(c) : c.Record.Combustion?.Readings?.Any(reading => reading.Stage != WorkStage.BeforeWork) == true;

    /// <summary>Nobody got to the boiler, and nothing on record is of somebody who did.</summary>
    public static bool IsNothingReached(Case c) => c.SaysNothingReached() && !HasTraces(c);

    private static bool HasTraces(Case c) => c.Record is { Combustion.Readings.Count: > 0 } or { PartsFitted.Count: > 0 } or { DisturbedJoints.Count: > 0 } or { TightnessTests.Count: > 0 }
        || c.Record.GasSupply is { ApplianceInletMbar: not null } or { BurnerMbar: not null } or { Rate: not null };

    private static bool IsBrokenOff(Case c) =>
        c.Record.Work?.Result is WorkResult.GasOff or WorkResult.AwaitingParts or WorkResult.StoppedForDanger or WorkResult.PartlyCarriedOut;

    /// <summary>Refused and left: with the emergency provider's reference, or at risk and signed for.</summary>
    private static bool IsRefusalDealtWith(Defect defect) =>
        defect is { Permission: Consent.Refused, Action: null or DefectAction.None, Class: DefectClass.AtRisk or DefectClass.ImmediatelyDangerous }
        && (Given(defect.EmergencyReference) || defect is { Class: DefectClass.AtRisk, UserSigned: true });

    private static Outcome? Reason(Case c, NotDone said)
    {
        if (said.What is not { } what)
            return Outcome.NotApplicable;
        if (c.Pages.IsDone(what))
            return Outcome.Missing;
        return said.Because is not { } because ? Outcome.NotApplicable : Agrees(!ReasonTable.InForce.Rows.Any(row =>
            row.Because == because && row.What.Any(pattern => Pages.Meets(what, pattern)) && row.IsContradicted(c)));
    }

    /// <summary>Carried out, and yet left undone, for a reason that excuses no must, what every such job has to do.</summary>
    private static bool IsMustLeftUndone(Case c) => c.Record.Work!.Result == WorkResult.CarriedOut && c.Record.Work.NotDone!.Any(said =>
        said is { What: { } what, Because: NotDoneReason.NoInstrument or NotDoneReason.CustomerRefused or NotDoneReason.ApplianceLeftOff or NotDoneReason.Other }
        && Musts(c).Any(must => Pages.IsWithin(what, must) || Pages.IsWithin(must, what)));

    private static IEnumerable<string> Musts(Case c) =>
    [
        "/heatExchanger/inspected", "/heatExchanger/cleaned", "/combustion/readings", "/flue/visualOk", "/condensate/trapRefilled", "/safetyDevices",
        .. c.Record.GasSupply?.ApplianceInletMbar is null ? ["/gasSupply/rate"] : Array.Empty<string>(),
    ];
}
