using Findings;
using Kernel;
using Records;
using Rules.Combustion;
using Visits;

namespace Rules.HeatInput;

[Id(RuleIds.PressureOrHeatInputExamined), Topic(Topics.HeatInput), Cites("GSIUR-1998", "26(9)(c)"), Cites("GSIUR-1998", "26(9)(ca)")]
[Title("After work the operating pressure or the heat input is examined, or combustion where neither is reasonably practicable")]
[Why("Work inside a boiler can change how much gas it burns without any outward sign. Regulation 26(9) asks for operating pressure or heat input afterwards, and for combustion only where neither is reasonably practicable.")]
[Serves(Part.PressureOrRate)]
[Uses(LimitIds.FlueGasCo2, LimitIds.FlueGasO2, LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes)]
[Coverage(Coverage.Full, "what was examined and the reason otherwise are recorded")]
public sealed class PressureOrHeatInputExaminedRule : VisitRule
{
    /// <summary>SI 2018/139 regulation 1: paragraph (ca) came into force; before it an exemption of the authority served.</summary>
    private static readonly DateOnly CombustionMayStandInFrom = new(2018, 4, 6);

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

        look.Note(visit.Record.Combustion?.PressureAndRateNotPracticableReason);
        if (visit.StatedReason() is not { } reason)
        {
            return look.Advisory($"combustion was examined in place of operating pressure and heat input, and no reason is stated")
                .Advise("Measure the operating pressure or time the gas rate, or state why neither was reasonably practicable.");
        }

        return visit.AsOf >= CombustionMayStandInFrom
            ? look.Pass($"combustion was examined in place of operating pressure and heat input, for a stated reason: {reason}")
            : look.Advisory($"combustion was examined in place of operating pressure and heat input; before {CombustionMayStandInFrom} only an exemption allowed that");
    }
}
