using Records;

namespace SecondOpinion.Duties;

/// <summary>Condensate trap filled: a dry one lets products into the room.</summary>
internal static class FillTrap
{
    private const DutyKind Kind = DutyKind.FillTrap;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached)
            yield break;
        var why = visit.IsService ? "an annual service"
            : visit.IsInstallation ? "a new boiler"
            : visit.IsTopPlateOff ? "the top plate was off"
            : visit.HasPart(PartKind.HeatExchanger, PartKind.CondensateTrap) ? "a part was fitted"
            : visit.Touched.Has(TouchedPart.CondensatePath) ? visit.Touched.Why(TouchedPart.CondensatePath)
            : null;
        if (visit.Record.Condensate?.TrapRefilled == false || (why is not null && visit.IsCondensing))
        {
            var isOpened = visit.IsTopPlateOff || visit.HasPart(PartKind.CondensateTrap);
            yield return visit.Must(Kind, "/condensate/trapRefilled", visit.Record.Condensate?.TrapRefilled, why ?? "it was seen dry", isOpened ? Seen.Always : Seen.InTheJob);
            if (visit.IsService)
                yield return visit.Should(Kind, "/condensate/trapCleaned", visit.Record.Condensate?.TrapCleaned, why ?? "", Seen.InTheJob);
        }

        if (visit.IsService && visit.Record.Appliance.Condensing is null)
            yield return visit.Must(Kind, "/appliance/condensing", null, "it decides whether there is a trap");
    }
}
