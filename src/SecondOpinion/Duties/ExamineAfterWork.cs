using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Regulation 26(9)(a) to (d) after any work on the boiler and at every check; left off: flue and air as far as they can be seen cold.</summary>
internal static class ExamineAfterWork
{
    private const DutyKind Kind = DutyKind.ExamineAfterWork;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached)
            yield break;
        foreach (var owed in Terminal.Asks(visit))
            yield return owed;
        if (!visit.IsExaminationOwed || visit.IsBesideTheBoiler)
            yield break;
        foreach (var owed in FlueAndAir(visit).Concat(PressureOrHeatInput(visit)))
            yield return owed;
    }

    private static IEnumerable<Owed> FlueAndAir(Visit visit)
    {
        const string Why = "26(9)(a) and (b)";
        var (flue, vents) = (visit.Record.Flue, visit.Record.Ventilation);
        // Of a boiler that is not hung yet nothing can be seen.
        var cold = visit.IsInstallation ? Seen.InTheJob : Seen.Always;
        yield return visit.Must(Kind, "/flue/visualOk", visit.Recorded("/flue/visualOk"), Why, cold);
        yield return visit.Must(Kind, "/flue/effectivenessConfirmed", flue?.EffectivenessConfirmed is null && IsFlueProved(visit) ? true : visit.Recorded("/flue/effectivenessConfirmed"), Why, Seen.Running);
        yield return visit.Must(Kind, "/ventilation/airInletClear", visit.Recorded("/ventilation/airInletClear"), Why, cold);
        if (visit.IsOpenFlued)
        {
            yield return visit.Must(Kind, "/flue/spillageTestPassed", visit.Recorded("/flue/spillageTestPassed"), Why, Seen.Running);
            yield return visit.Should(Kind, "/flue/flowTestPassed", visit.Recorded("/flue/flowTestPassed"), Why);
            yield return visit.Must(Kind, "/ventilation", vents is { FreeAreaCm2: not null } or { HighFreeAreaCm2: not null, LowFreeAreaCm2: not null } ? true : null, Why);
            if (flue?.SpillageTestPassed == true)
                yield return visit.Must(Kind, "/flue/fansRunningDuringSpillage", vents?.ExtractFanInRoom == false || flue.FansRunningDuringSpillage == true ? true : null, Why, Seen.Running);
            // How large a vent has to be, and whether an open flue may be there at all, turns on these; none of them falls away by silence.
            foreach (var pointer in OfOpenFlue)
                yield return visit.Must(Kind, pointer, visit.Recorded(pointer), Why);
        }

        foreach (var owed in Clearances(visit))
            yield return owed;

        if (visit.IsSleepingRoomExcepted)
            yield return visit.Must(Kind, "/coAlarm/present", visit.Record.CoAlarm?.Present, "36(12): an open flue where people sleep");
        if (visit.IsService && visit.One.IsOpenFlued() == false && visit.IsFanned)
            yield return visit.Should(Kind, "/combustion/airInlet", visit.Recorded("/combustion/airInlet"), "an annual service", Seen.Running);
        yield return visit.Should(Kind, "/flue/terminalClearances", visit.Recorded("/flue/terminalClearances"), Why);
        if (visit.Record.Appliance.Fuel != Fuel.NaturalGas)
            yield return visit.Must(Kind, "/premises/belowGround", visit.Recorded("/premises/belowGround"), "liquefied gas gathers below ground, 6(8)(b)");
    }

    private static readonly string[] OfOpenFlue =
    [
        "/premises/room", "/appliance/ratedInputKw", "/appliance/ratedInputBasis",
        "/ventilation/blocked", "/ventilation/compartment", "/ventilation/otherOpenFluedNetKw", "/ventilation/throughInnerRooms",
    ];

    /// <summary>A distance of which half is told is none.</summary>
    private static IEnumerable<Owed> Clearances(Visit visit)
    {
        foreach (var (place, clearance) in (visit.Record.Flue?.TerminalClearances ?? []).Index())
        {
            if (clearance.To is null || clearance.DistanceMm is null)
                yield return visit.Must(Kind, $"/flue/terminalClearances/{place}/{(clearance.To is null ? "to" : "distanceMm")}", null, "26(9)(a)");
        }
    }

    private static bool IsFlueProved(Visit visit) => visit.Record.Flue is { SpillageTestPassed: true, FlowTestPassed: true };

    /// <summary>One of both serves; after a gas valve or an injector both; combustion stands in only by the table of reasons.</summary>
    private static IEnumerable<Owed> PressureOrHeatInput(Visit visit)
    {
        const string Why = "26(9)(c)";
        const string Pressure = "/gasSupply/applianceInletMbar";
        const string Rate = "/gasSupply/rate";
        var (hasPressure, hasRate) = (Examination.PressureExamined(visit.One), Gas.IsRateTaken(visit));
        if (visit.IsInstallation)
            yield break;
        if (Gas.AreBothNecessary(visit) ? hasPressure && hasRate : hasPressure || hasRate)
        {
            yield return visit.Must(Kind, hasPressure ? Pressure : Rate, true, Why);
            yield break;
        }

        var pressure = hasPressure ? true : (bool?)null;
        var rate = hasRate ? true : (bool?)null;
        var owed = new[] { visit.Must(Kind, Pressure, pressure, Why, Seen.Running), visit.Must(Kind, Rate, rate, Why, Seen.Running) };
        foreach (var one in owed)
            yield return one;
        if (!visit.IsRunningPutOff && owed.Any(one => one.State == DutyState.Missing) && visit.Record.Work?.NotDone?.Any(said => said.What is Pressure or Rate) == true)
        {
            foreach (var lacks in Analysis.Lacks(visit))
                yield return visit.Must(Kind, lacks, null, "26(9)(ca)");
        }
    }
}
