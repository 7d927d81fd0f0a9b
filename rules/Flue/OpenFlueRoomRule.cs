using Findings;
using Kernel;
using Records;
using Rules.AmbientAir;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.OpenFlueRoom), Topic(Topics.Flue), Cites("GSIUR-1998", "30"), Cites("GSIUR-1998", "36(11)"), Cites("GSIUR-1998", "36(12)")]
[Title("No open-flued boiler stands in a bath or shower room, nor in a sleeping room unless it is small and guards against vitiated air")]
[Why("An open flue takes its air from the room and can spill back into it, where a sleeper or bather may not wake or get out. Regulation 30 bars it from bath and shower rooms and restricts it where people sleep.")]
[Serves(Part.Flue)]
[Uses(LimitIds.AmbientCo, LimitIds.SleepingRoomInput)]
[AppliesBy("/appliance/flueType")]
[Coverage(Coverage.Full, "room, input and device decide")]
public sealed class OpenFlueRoomRule : VisitRule
{
    protected override string SubjectPointer => "/premises";

    protected override bool? Applies(Visit visit) => visit.IsOpenFlued;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Premises?.Room) == Room.Bathroom)
            return Forbidden(look.Unsafe($"an open-flued boiler stands in a bath or shower room", look.ClassOfEscapingProducts(visit)));
        var isSleptIn = look.Note(visit.Record.Premises?.RoomIsSleeping) == true;
        var isNamedForSleeping = isSleptIn || visit.Record.Premises?.Room == Room.Bedroom;
        return isNamedForSleeping ? SleepingRoom(visit, look) : OtherRoom(visit, look);
    }

    private static Verdict OtherRoom(Visit visit, Look look) =>
        look.Lacks(visit.Record.Premises?.RoomIsSleeping, out _) | look.Lacks(visit.Record.Premises?.Room, out var room)
            ? look.Missing()
            : look.Pass($"the open-flued boiler stands in a room ({room}) in which nobody sleeps");

    private static Verdict SleepingRoom(Visit visit, Look look)
    {
        var verdict = ByRegulation30(visit, look);
        return verdict.Outcome == Outcome.Unsafe && IsExcepted(visit, look) ? Excepted(visit, look) : verdict;
    }

    // Regulation 36(12) lifts 36(11) alone, which is the landlord's; what is put in today is under regulation 30, and no danger is excepted.
    private static bool IsExcepted(Visit visit, Look look) =>
        visit.Record.JobType != JobType.Commissioning && visit.IsLet != false && visit.CoIsRaised() != true && visit.Record.Flue?.SpillageTestPassed != false && look.Note(visit.Record.Premises?.SleptInSinceBeforeRegulations) == true;

    private static Verdict Excepted(Visit visit, Look look)
    {
        List<string> asked = [];
        if (look.Note(visit.Record.Flue?.SpillageTestPassed) is null)
            asked.Add("/flue/spillageTestPassed");
        if (look.Note(visit.Record.Ventilation?.FreeAreaCm2) is null)
            asked.Add("/ventilation/freeAreaCm2");
        if (look.Note(visit.Record.CoAlarm?.Tested) is null)
            asked.Add("/coAlarm/tested");
        return look.Advisory($"an open-flued boiler that regulation 36(11) would bar stands in a sleeping room that has served as one since before the Regulations")
            .AndMissing(asked).Warn(Cautions.CarbonMonoxide)
            .Advise("Prove that nothing spills, that the vent is clear and large enough and that the carbon monoxide alarm works, at every visit; a room-sealed boiler would end the danger.");
    }

    private static Verdict ByRegulation30(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Appliance.VitiationDevice) == false)
            return Forbidden(look.Unsafe($"an open-flued boiler in a sleeping room has no device against vitiated air", look.ClassOfEscapingProducts(visit)));
        if (look.Lacks(visit.Record.Appliance.RatedInputKw, out var rated) | look.Lacks(visit.Record.Appliance.RatedInputBasis, out var basis))
            return look.Missing($"an open-flued boiler stands in a sleeping room, and its heat input is not recorded");

        var limit = visit.Limits[LimitIds.SleepingRoomInput];
        // By way of the net input, whose digits the findings have always shown; a gross figure whose fuel is not recorded serves as it stands.
        var gross = basis == InputBasis.Gross && visit.Appliance.Fuel is null ? rated : Calculations.HeatInput.GrossKwFromNet(visit.RatedInputNetKw ?? rated, visit.GasFamily);
        var shown = gross.Beside(limit, 1);
        if (!limit.Allows(gross))
        {
            return Forbidden(look.Unsafe($"an open-flued boiler of {shown} kW gross stands in a sleeping room (at most {limit.Max})", look.ClassOfEscapingProducts(visit)))
                .Against(limit, gross);
        }

        return look.Lacks(visit.Record.Appliance.VitiationDevice, out _) | look.Lacks(visit.Record.Premises?.Room, out _)
            ? look.Missing($"an open-flued boiler stands in a sleeping room, and the record does not say enough of room and device")
            : look.Pass($"the open-flued boiler of {shown} kW gross in a sleeping room has a device against vitiated air").Against(limit, gross);
    }

    private static Verdict Forbidden(Verdict verdict) => verdict.Warn(Cautions.CarbonMonoxide)
        .Advise("Turn the boiler off with permission; the room needs a room-sealed appliance.");
}
