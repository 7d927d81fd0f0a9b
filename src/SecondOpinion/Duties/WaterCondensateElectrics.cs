using Records;

namespace SecondOpinion.Duties;

/// <summary>The water side, condensate pipe and electrics of an annual service; what was touched for its own danger.</summary>
internal static class WaterCondensateElectrics
{
    private const DutyKind Kind = DutyKind.WaterCondensateElectrics;
    private static readonly string[] Sealed = ["coldFillBar", "reliefValve", "reliefDischargeSafe"];
    private static readonly string[] OpenVented = ["ventAndFeedOpen"];
    private static readonly string[] Electrics = ["polarityOk", "earthOk", "fuseAmps"];

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || visit.IsRemoval)
            yield break;
        foreach (var owed in (visit.IsService ? OfAService(visit) : []).Concat(OfWhatWasTouched(visit)))
            yield return owed;
    }

    private static IEnumerable<Owed> OfAService(Visit visit)
    {
        const string Why = "an annual service";
        foreach (var member in visit.IsSealedSystem ? Sealed : OpenVented)
            yield return visit.Should(Kind, $"/water/{member}", visit.Recorded($"/water/{member}"), Why, Seen.InTheJob);
        foreach (var member in Electrics)
            yield return visit.Should(Kind, $"/electrical/{member}", visit.Recorded($"/electrical/{member}"), Why, Seen.InTheJob);
        if (visit.IsCondensing)
            yield return visit.Should(Kind, "/condensate/seenRunning", visit.Recorded("/condensate/seenRunning"), Why, Seen.Running);
    }

    private static IEnumerable<Owed> OfWhatWasTouched(Visit visit)
    {
        var water = visit.Record.Water;
        var (isWater, isElectrics) = (visit.Touched.Has(TouchedPart.WaterSide), visit.Touched.Has(TouchedPart.Electrics) || visit.IsInstallation);
        if (isElectrics)
        {
            var why = visit.IsInstallation ? "a new boiler" : visit.Touched.Why(TouchedPart.Electrics);
            var seen = visit.Touched.Has(TouchedPart.Electrics) ? Seen.Always : Seen.InTheJob;
            yield return visit.Must(Kind, "/electrical/polarityOk", visit.Recorded("/electrical/polarityOk"), why, seen);
            yield return visit.Must(Kind, "/electrical/earthOk", visit.Recorded("/electrical/earthOk"), why, seen);
        }

        if (water?.FillingLoopDisconnected == false || (isWater && visit.IsSealedSystem))
            yield return visit.Must(Kind, "/water/fillingLoopDisconnected", water?.FillingLoopDisconnected, visit.Touched.Why(TouchedPart.WaterSide));
        if (isWater && !visit.IsSealedSystem)
            yield return visit.Must(Kind, "/water/ventAndFeedOpen", water?.VentAndFeedOpen, "open-vented");
        if (visit.HasPart(PartKind.ReliefValve))
        {
            yield return visit.Must(Kind, "/water/reliefValve", visit.Recorded("/water/reliefValve"), "a relief valve was fitted");
            yield return visit.Must(Kind, "/water/reliefDischargeSafe", visit.Recorded("/water/reliefDischargeSafe"), "a relief valve was fitted");
        }
    }
}
