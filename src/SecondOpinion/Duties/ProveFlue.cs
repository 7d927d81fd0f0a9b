using Records;

namespace SecondOpinion.Duties;

/// <summary>Joints, supports, route, terminal by distance, air inlet, or flow and spillage.</summary>
internal static class ProveFlue
{
    private const DutyKind Kind = DutyKind.ProveFlue;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || !(visit.Touched.Has(TouchedPart.Flue) || visit.IsNew) || visit.IsRemoval)
            yield break;
        var why = visit.IsNew ? "a new boiler, 33(1)(a)" : visit.Touched.Why(TouchedPart.Flue);
        var flue = visit.Record.Flue;
        foreach (var member in new[] { "visualOk", "supportsOk", "wholeRouteSeen" })
            yield return visit.Must(Kind, $"/flue/{member}", visit.Recorded($"/flue/{member}"), why, Seen.InTheJob);
        if (visit.One.IsOpenFlued() == true)
        {
            yield return visit.Must(Kind, "/flue/flowTestPassed", visit.Recorded("/flue/flowTestPassed"), why, Seen.InTheJob);
            yield return visit.Must(Kind, "/flue/spillageTestPassed", visit.Recorded("/flue/spillageTestPassed"), why, Seen.Running);
            yield break;
        }

        yield return visit.Must(Kind, "/flue/terminalClearances", flue?.TerminalClearances is null ? null : true, why, Seen.InTheJob);
        var inlet = visit.Record.Combustion?.AirInlet is { O2Percent: not null } or { Co2Percent: not null } ? true : (bool?)null;
        if (visit.Record.Appliance.FlueType != FlueType.RoomSealedNatural)
            yield return visit.Must(Kind, "/combustion/airInlet", inlet, why, Seen.Running);
    }
}
