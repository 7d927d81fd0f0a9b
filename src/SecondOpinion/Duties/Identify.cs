using Records;

namespace SecondOpinion.Duties;

/// <summary>Day, job, how the premises are held, how the boiler was left; let, new or classed: described and placed.</summary>
internal static class Identify
{
    public static IEnumerable<Owed> Of(Visit visit)
    {
        const string Why = "every visit";
        var record = visit.Record;
        yield return visit.Must(DutyKind.Identify, "/premises/use", visit.Recorded("/premises/use"), Why);
        if (visit.SaysNothingReached && visit.IsNothingReached)
            yield break;
        if (!visit.IsRemoval && !visit.IsBesideTheBoiler)
            yield return visit.Must(DutyKind.Identify, "/appliance/stateOnLeaving", visit.Recorded("/appliance/stateOnLeaving"), Why);
        yield return visit.Must(DutyKind.Identify, "/defects", record.Defects is null ? null : true, Why);
        if (visit.IsLet || visit.IsNew || visit.Defects.Any(DefectPlace.IsDangerous))
            yield return visit.Must(DutyKind.Identify, "/appliance/location", visit.Recorded("/appliance/location"), "let, new or classed");
        foreach (var member in new[] { "maker", "model", "serialNumber" })
            yield return visit.Should(DutyKind.Identify, $"/appliance/{member}", visit.Recorded($"/appliance/{member}"), Why);
        if (visit.IsRepair && record.Work?.Touched is null)
            yield return visit.Must(DutyKind.Identify, "/work/touched", null, "a repair says what it touched");
        if (visit.IsRepair && record.PartsFitted is null)
            yield return visit.Must(DutyKind.Identify, "/partsFitted", null, "a repair says what it fitted", Seen.InTheJob);
        if (visit is { IsService: true, Result: WorkResult.CarriedOut } && visit.Touched.IsNothing)
            yield return visit.Must(DutyKind.Identify, "/work/touched", null, "a service was carried out");
        yield return visit.Should(DutyKind.Identify, "/work/result", visit.Recorded("/work/result"), Why);
        if (visit.HasPart(PartKind.Injector))
            yield return visit.Must(DutyKind.Identify, "/appliance/plateFuel", visit.Recorded("/appliance/plateFuel"), "an injector is for one gas, 26(7)");
        foreach (var (place, part) in visit.Fitted.Index())
        {
            if (part.Kind is PartKind.GasValve or PartKind.Injector)
                yield return visit.Must(DutyKind.Identify, $"/partsFitted/{place}/forFuel", visit.Recorded($"/partsFitted/{place}/forFuel"), "it is made for one gas, 5(1)");
            if (part.Kind is null or PartKind.Other)
                yield return visit.Must(DutyKind.Identify, $"/partsFitted/{place}/kind", null, "a part was fitted");
        }

        if (visit.IsInstallation)
            yield return visit.Must(DutyKind.Identify, "/commissioning/newBoiler", visit.Recorded("/commissioning/newBoiler"), "a boiler was put into use", Seen.InTheJob);
        if (visit.IsService || visit.IsNew)
            yield return visit.Must(DutyKind.Identify, "/appliance/flueType", visit.Recorded("/appliance/flueType"), "it decides what is examined");
    }
}
