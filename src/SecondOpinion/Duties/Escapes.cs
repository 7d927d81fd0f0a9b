using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>An escape, known, suspected or shown: what was done where gas was left off, and what where it was restored.</summary>
internal static class Escapes
{
    private const decimal FumesPpm = 30;

    /// <summary>Gas or fumes were found, whatever was ticked.</summary>
    public static bool IsShown(Visit visit) => IsLeakFound(visit) || IsFumesFound(visit);

    private static bool IsLeakFound(Visit visit) => (visit.Record.TightnessTests ?? []).Any(test => Tightness.WhatTheGaugeShows(visit.One, test) == Tightness.Shown.Leak);

    private static bool IsFumesFound(Visit visit) => visit.Record.AmbientCo is { BeforePpm: > FumesPpm } or { RunningPeakPpm: > FumesPpm } or { AfterPpm: > FumesPpm };

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (!visit.IsEscape && !IsShown(visit))
            yield break;
        var isPutRight = visit.Situation.State == DangerState.PutRight;
        var isSearched = visit is { IsInUse: true, IsNothingReached: false, Situation.State: null };
        if (!isPutRight && !isSearched && visit.Record.Escape is not ({ Reported: true } or { GasIsolated: true }))
            yield return visit.Must(DutyKind.EscapeGasLeftOff, "/escape/reported", visit.Record.Escape?.Reported, "gas or fumes were found, or an alarm sounded");
        foreach (var owed in isPutRight || isSearched ? Restored(visit) : LeftOff(visit))
            yield return owed;
    }

    /// <summary>
    /// An escape of which no defect speaks: isolated and reported it is out of use, else it stands. Where the boiler is in use again it is
    /// excluded once the pipes are proved tight or, after an alarm, the room was swept without a rise.
    /// </summary>
    public static IEnumerable<Danger> Unclassed(Visit visit)
    {
        if (!visit.IsEscape)
            yield break;
        if (visit is { IsInUse: true, IsNothingReached: false })
        {
            var isSwept = visit.Record.CoAlarm?.ActivatedSinceLastVisit == true && RoomSweep.IsWithoutRise(visit.Record.AmbientCo);
            if (!TightProof.IsProved(visit) && !isSwept)
                yield return new Danger("/escape", DangerState.NotExcluded, [.. Restored(visit)]);
            yield break;
        }

        var isIsolated = visit.Record.Escape is { GasIsolated: true, IsolatedAt: not (null or IsolationPoint.NotIsolated) };
        yield return new Danger("/escape", isIsolated ? DangerState.TakenOutOfUse : DangerState.Standing, [.. LeftOff(visit)]);
    }

    private static IEnumerable<Owed> LeftOff(Visit visit)
    {
        const DutyKind Kind = DutyKind.EscapeGasLeftOff;
        const string Why = "37; of mains gas GSMR 7";
        var escape = visit.Record.Escape;
        // Who was refused may not shut it off; whoever was called in does.
        if (visit.Situation.State != DangerState.LeftByRefusal)
        {
            yield return visit.Must(Kind, "/escape/gasIsolated", escape?.GasIsolated, Why);
            yield return visit.Must(Kind, "/escape/isolatedAt", IsIsolated(visit), Why);
        }

        foreach (var kind in new[] { Kind, DutyKind.MadeKnown })
            yield return visit.Must(kind, "/escape/told", escape?.Told is { Count: > 0 } ? true : null, Why);
        yield return visit.Must(Kind, "/escape/reference", string.IsNullOrWhiteSpace(escape?.Reference) ? null : true, Why);
        if (visit.Situation.State == DangerState.LeftByRefusal)
            yield break;
        var isOpened = visit.Joints.Any(JointsOpinions.CarriesGas) || visit.Touched.Has(TouchedPart.Pipework);
        if (isOpened)
            yield return visit.Must(Kind, "/work/gaswaysSealed", visit.Record.Work?.GaswaysSealed, "a gasway was opened");
    }

    private static bool? IsIsolated(Visit visit) => visit.Record.Escape?.IsolatedAt switch
    {
        null => null,
        IsolationPoint.NotIsolated => false,
        IsolationPoint.ApplianceValve or IsolationPoint.ElectricalSupply => !visit.Defects.Any(defect => DefectPlace.IsDangerous(defect) && DefectPlace.IsAboveTheBoiler(visit, defect)),
        _ => true,
    };

    private static IEnumerable<Owed> Restored(Visit visit)
    {
        const DutyKind Kind = DutyKind.EscapeGasRestored;
        const string Why = "22, 33(3), 37(4); of mains gas GSMR 7(9)";
        if (!IsLeakFound(visit) && visit.Record.Escape?.GasIsolated != true && !visit.Touched.Has(TouchedPart.GasPath) && !visit.Touched.Has(TouchedPart.Pipework))
            yield break;
        foreach (var owed in TightProof.Asks(visit, Kind, Why))
            yield return owed;
        if (visit.IsLeftOff && visit.IsRunningPutOff)
            yield break;
        yield return visit.Must(Kind, "/work/purged", visit.Record.Work?.Purged, Why);
        yield return visit.Must(Kind, "/work/relit", visit.Record.Work?.Relit, Why);
    }
}
