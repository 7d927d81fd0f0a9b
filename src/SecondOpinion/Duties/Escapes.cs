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
        var isPutRight = IsPutRight(visit);
        if (!isPutRight && visit.Record.Escape?.Reported is not true && !visit.IsEscape)
            yield return visit.Must(DutyKind.EscapeGasLeftOff, "/escape/reported", visit.Record.Escape?.Reported, "gas or fumes were found");
        foreach (var owed in isPutRight ? Restored(visit) : LeftOff(visit))
            yield return owed;
    }

    /// <summary>Found, mended and shown to be gone.</summary>
    public static bool IsPutRight(Visit visit) => visit.Defects.Any(defect => defect is { Action: DefectAction.Rectified } && DefectPlace.SectionOf(defect) is "tightnessTests" or "disturbedJoints" or "pipework" or "escape" or "gasSupply")
        && !Tightness.IsLeftLeaking(visit.One) && !IsFumesFound(visit);

    private static IEnumerable<Owed> LeftOff(Visit visit)
    {
        const DutyKind Kind = DutyKind.EscapeGasLeftOff;
        const string Why = "37; of mains gas GSMR 7";
        var escape = visit.Record.Escape;
        yield return visit.Must(Kind, "/escape/gasIsolated", escape?.GasIsolated, Why);
        yield return visit.Must(Kind, "/escape/isolatedAt", escape?.IsolatedAt switch { null => null, IsolationPoint.NotIsolated => false, _ => true }, Why);
        yield return visit.Must(Kind, "/escape/told", escape?.Told is { Count: > 0 } ? true : null, Why);
        yield return visit.Must(Kind, "/escape/reference", string.IsNullOrWhiteSpace(escape?.Reference) ? null : true, Why);
        var isOpened = visit.Joints.Any(JointsOpinions.CarriesGas) || visit.Touched.Has(TouchedPart.Pipework);
        if (isOpened)
            yield return visit.Must(Kind, "/work/gaswaysSealed", visit.Record.Work?.GaswaysSealed, "a gasway was opened");
    }

    private static IEnumerable<Owed> Restored(Visit visit)
    {
        const DutyKind Kind = DutyKind.EscapeGasRestored;
        const string Why = "22, 33(3), 37(4); of mains gas GSMR 7(9)";
        yield return visit.Must(Kind, "/tightnessTests", Tightness.IsProvedTight(visit.One) switch { true => true, _ => null }, Why);
        if (visit.IsLeftOff && visit.IsRunningPutOff)
            yield break;
        yield return visit.Must(Kind, "/work/purged", visit.Record.Work?.Purged, Why);
        yield return visit.Must(Kind, "/work/relit", visit.Record.Work?.Relit, Why);
    }
}
