using Calculations;
using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.StatedRatioAgrees), Topic(Topics.Plausibility), Cites("BS-7967"), CommonPractice]
[Title("A CO/CO2 ratio that was written down is that of the CO and CO2 beside it")]
[Why("One slipped decimal point, or a ratio from another printout, can make poor combustion look clean. Worked out again from CO and CO2, the ratio shows whether all three belong to one reading.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Uses(LimitIds.StatedRatioDeviation)]
[Expects("/combustion/readings")]
[Coverage(Coverage.Full, "arithmetic on three members")]
public sealed class StatedRatioAgreesRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.Readings;

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Note(reading.StatedRatio) is not { } stated)
            return look.NotApplicable($"no ratio was written down; it is worked out from CO and CO2");
        if (look.Lacks(reading.CoPpm, out var co) | look.Lacks(reading.Co2Percent, out var co2))
            return look.Missing();
        if (co2 == 0)
            return look.Missing($"without CO2 there is no ratio", $"{look.Subject}/co2Percent");

        var ratio = FlueGas.Ratio(co, co2);
        var limit = visit.Limits[LimitIds.StatedRatioDeviation];
        if (limit.Allows(Math.Abs(stated - ratio)))
            return look.Pass($"the ratio of {stated} that was written down is that of the readings, {ratio:0.00000}")
                .Against(limit, Math.Abs(stated - ratio));

        // The worse of the two may be the true one, and the verdict on the ratio rests on the other.
        return stated > ratio
            ? look.Missing($"the ratio of {stated} that was written down is worse than that of the readings beside it, {ratio:0.00000}; one of them is wrong", $"{look.Subject}/coPpm", $"{look.Subject}/co2Percent")
                .Against(limit, stated - ratio).Warn(Cautions.CarbonMonoxide).Advise("Read again and record CO, CO2 and ratio of one print.")
            : look.Advisory($"the ratio of {stated} that was written down is not that of the readings beside it, {ratio:0.00000}")
                .Against(limit, ratio - stated).Advise("Read again and record CO, CO2 and ratio of one print.");
    }
}
