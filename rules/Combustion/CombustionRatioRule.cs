using Calculations;
using Findings;
using Kernel;
using Records;
using Rules.AmbientAir;
using Visits;
using Visits.Computations;

namespace Rules.Combustion;

[Id(RuleIds.CombustionRatio), Topic(Topics.Combustion), Cites("BS-7967", "12"), Cites("GSIUR-1998", "26(9)(ca)")]
[Title("The CO/CO2 ratio after the work is within the maker's limit, or the standard's where the maker gives none")]
[Why("How completely the gas burns shows in the CO/CO2 ratio, however much air dilutes the sample. A high ratio means CO in quantity, which any leaking seal or flue would let into the room.")]
[Serves(Part.Analysis)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.CoPpm, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2,
    LimitIds.FlueGasO2, LimitIds.MaximumRateLoad, LimitIds.AmbientCo)]
[Expects("/combustion/readings")]
[Coverage(Coverage.Full, "each reading after work is held against maker, default and ceiling")]
public sealed class CombustionRatioRule : FlueReadingRule
{
    protected override Verdict Judge(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.CoPpm, out var co) | look.Lacks(reading.Co2Percent, out var co2) || co2 == 0)
            return look.Missing();

        var ratio = FlueGas.Ratio(co, co2);
        var doubt = look.DoubtOf(visit, FlueGasComputations.CoCo2Ratio.Name);
        look.Note(visit.Maker.CoCo2RatioMax);
        var limit = visit.RatioLimit();
        var ceiling = visit.Limits[LimitIds.CoCo2RatioCeiling];

        if (!ceiling.Allows(ratio))
        {
            var danger = look.Unsafe($"the CO/CO2 ratio is {ratio.Beside(ceiling, 4)}, above {ceiling.Max:0.0000}, the most that any boiler may show", look.ClassOfEscapingProducts(visit))
                .Against(ceiling, ratio, doubt).Warn(Cautions.CarbonMonoxide)
                .Advise("Do not leave the boiler in use. Find the cause in burner, air path, flue or gas setting by the maker's instructions, then measure again.");

            // Found, put right and measured again: without the defect nothing says that the later reading is more than luck.
            return visit.IsPutRight(look.Subject, Topics.Combustion) && visit.After(reading).Any(visit.IsGood)
                ? danger.PutRight($"a later reading at the same rate is within every limit")
                : danger;
        }

        if (!limit.Allows(ratio))
        {
            return look.OverLimit(visit, $"the CO/CO2 ratio after the work is {ratio.Beside(limit, 4)}, above {limit.Max:0.0000}",
                    needsDecision: true, isMeasuredAgain: visit.After(reading).Any(later => IsWithin(limit, later)))
                .Against(limit, ratio, doubt);
        }

        return visit.UsualMax(static maker => maker.CoCo2RatioMax, LimitIds.CoCo2Ratio) is var usual && usual.Allows(ratio)
            ? look.Pass($"the CO/CO2 ratio is {ratio.Beside(limit, 4)}, at most {limit.Max:0.0000}").Against(limit, ratio, doubt)
            : look.Advisory($"the CO/CO2 ratio is {ratio.Beside(limit, 4)}: within the maker's {limit.Max:0.0000}, above the usual {usual.Max:0.0000}")
                .Against(limit, ratio, doubt).Warn(Cautions.CarbonMonoxide).Advise("Make sure of the maker's figure in its source, and clean and check the burner.");
    }

    private static bool IsWithin(Limit limit, CombustionReading reading) =>
        reading is { CoPpm: { } co, Co2Percent: > 0 and { } co2 } && limit.Allows(FlueGas.Ratio(co, co2));
}
