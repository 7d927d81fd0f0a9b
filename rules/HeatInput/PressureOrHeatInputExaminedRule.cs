using Findings;
using Kernel;
using Records;
using Rules.Combustion;
using Rules.Duties;
using Visits;

namespace Rules.HeatInput;

[Id(RuleIds.PressureOrHeatInputExamined), Topic(Topics.HeatInput), Cites("GSIUR-1998", "26(9)(c)"), Cites("GSIUR-1998", "26(9)(ca)")]
[Title("After work the operating pressure or the heat input is examined, or combustion where neither is reasonably practicable")]
[Why("Work inside a boiler can change how much gas it burns without any outward sign. Regulation 26(9) asks for operating pressure or heat input afterwards, and for combustion only where neither is reasonably practicable.")]
[Serves(Part.PressureOrRate)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.CoPpm, LimitIds.MaximumRateLoad, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2,
    LimitIds.FlueGasO2, LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes, LimitIds.CalibrationMonths)]
[Coverage(Coverage.Full, "what was examined and the reason otherwise are recorded")]
public sealed class PressureOrHeatInputExaminedRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply";

    protected override Verdict Assess(Visit visit, Look look)
    {
        look.Note(visit.Record.GasSupply?.ApplianceInletMbar);
        look.Note(visit.Record.GasSupply?.BurnerMbar);
        if (visit.HasOperatingPressure())
            return look.Pass($"the operating pressure of the appliance was examined");
        if (visit.HasHeatInput())
            return look.Pass($"the heat input was examined");

        // From air no products of combustion were read.
        var isCombustionRead = visit.ReadingsAfterWork?.Any(reading => reading.Value is { Stage: WorkStage.AfterWork, CoPpm: not null, Co2Percent: not null }
            && visit.MemberThatShowsAir(reading.Value) is null) == true;
        if (!isCombustionRead)
        {
            return look.Missing($"neither the operating pressure nor the heat input was examined, and no flue reading stands in for them",
                "/gasSupply/applianceInletMbar", "/gasSupply/rate", "/combustion/readings");
        }

        if (visit.WhyNeither() is { } reason)
            return look.Advisory($"combustion was examined in place of operating pressure and heat input: {reason}")
                .Advise("Have a test point or the meter made good, so that pressure or heat input can be examined at the next visit.");

        // Free text decides nothing, and no reason helps at commissioning or beside an analysis that is not good.
        List<string> asked = ["/gasSupply/applianceInletMbar", "/gasSupply/rate"];
        if (visit.Record.JobType == JobType.Commissioning)
            return look.Missing($"combustion was examined in place of operating pressure and heat input, which at commissioning nothing stands in for", asked);

        return visit.HasGoodAnalysis()
            ? look.Missing($"combustion was examined in place of operating pressure and heat input, and the record does not give for each of them a reason that the law accepts", [.. asked, "/work/notDone"])
            : look.Missing($"combustion was examined in place of operating pressure and heat input, and not well enough to stand for both", [.. asked, "/combustion/readings"])
                .Advise("Read the flue after the work within every limit, with the time of each reading and an analyser in date, or examine pressure or heat input.");
    }
}
