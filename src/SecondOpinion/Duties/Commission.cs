using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Regulations 33(1), 22, 26(3), 26(6), 29 and 14(5), and the building regulations of a new or used boiler.</summary>
internal static class Commission
{
    private const DutyKind Kind = DutyKind.Commission;
    private static readonly DateOnly AlarmInEngland = new(2022, 10, 1);
    private static readonly DateOnly BoilerPlus = new(2018, 4, 6);

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || !visit.IsInstallation)
            yield break;
        foreach (var owed in Installed(visit).Concat(Supplied(visit)).Concat(Papers(visit)).Concat(Building(visit)))
            yield return owed;
    }

    private static IEnumerable<Owed> Installed(Visit visit)
    {
        yield return visit.Must(Kind, "/appliance/shutOffAtInlet", visit.Record.Appliance.ShutOffAtInlet, "26(6)", Seen.InTheJob);
        yield return visit.Must(Kind, "/commissioning/instructionsFollowed", visit.Record.Commissioning?.InstructionsFollowed, "33(1)(c)", Seen.InTheJob);
        if (visit.Record.Commissioning?.NewBoiler == false)
            yield return visit.Must(Kind, "/appliance/usedVerifiedSafe", visit.Record.Appliance.UsedVerifiedSafe, "26(3)");
    }

    private static IEnumerable<Owed> Supplied(Visit visit)
    {
        yield return visit.Must(Kind, "/gasSupply/applianceInletMbar", Examination.PressureExamined(visit.One) ? true : null, "33(1)(b)", Seen.Running);
        foreach (var owed in TightProof.Asks(visit, Kind, "33(1)(a), 22(1)", Seen.InTheJob))
            yield return owed;
        yield return visit.Must(Kind, "/work/purged", visit.Record.Work?.Purged, "22", Seen.Running);
        yield return visit.Should(Kind, "/gasSupply/rate", Gas.IsRateTaken(visit) ? true : null, "33(1)(b)", Seen.Running);
        yield return visit.Must(Kind, "/pipework/visualOk", visit.Recorded("/pipework/visualOk"), "22(1)", Seen.InTheJob);
        yield return visit.Must(Kind, "/gasSupply/regulatorSealIntact", visit.Recorded("/gasSupply/regulatorSealIntact"), "14(5)", Seen.InTheJob);
        yield return visit.Must(Kind, "/combustion/readings", Analysis.After(visit).Any(one => CombustionOpinions.RatioOf(one.Reading) is not null) ? true : null, "33(1)(c)", Seen.Running);
    }

    private static IEnumerable<Owed> Papers(Visit visit)
    {
        yield return visit.Must(Kind, "/paperwork/instructionsLeft", visit.Record.Paperwork?.InstructionsLeft, "29", Seen.InTheJob);
    }

    /// <summary>Approved Documents L and J, England; Wales and Scotland have their own, which are read here only for the alarm.</summary>
    private static IEnumerable<Owed> Building(Visit visit)
    {
        var (record, day) = (visit.Record, visit.One.AsOf);
        if (record.Jurisdiction != Nations.England || record.Premises?.Use == PremisesUse.Workplace)
            yield break;
        if (day >= AlarmInEngland)
            yield return visit.Must(Kind, "/coAlarm/present", record.CoAlarm?.Present, "AD J 3.43: a new or replaced boiler", Seen.InTheJob);
        if (day < BoilerPlus || record.Commissioning?.NewBoiler == false)
            yield break;
        yield return visit.Must(Kind, "/commissioning/interlock", record.Commissioning?.Interlock, "AD L", Seen.InTheJob);
        var efficiency = record.Commissioning?.SeasonalEfficiencyPercent;
        yield return visit.Must(Kind, "/commissioning/seasonalEfficiencyPercent", efficiency is null ? null : true, "AD L table 6.2", Seen.InTheJob);
        if (efficiency < visit.One.Limit("new-boiler-efficiency")?.Min)
            yield return visit.Must(Kind, "/commissioning/exceptionalCircumstance", visit.Recorded("/commissioning/exceptionalCircumstance"), "AD L table 6.2", Seen.InTheJob);
        yield return visit.Should(Kind, "/commissioning/extraMeasure", record.Appliance.Kind is ApplianceKind.Combi or null ? visit.Recorded("/commissioning/extraMeasure") : true, "AD L", Seen.InTheJob);
    }
}
