using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

[Id(RuleIds.FlueCo), Topic(Topics.Combustion), Cites("BS-7967"), Cites("GSIUR-1998", "26(9)(ca)")]
[Title("Carbon monoxide in the flue gas at maximum rate is within the maker's limit, or the trade's default where the maker gives none")]
[Why("Gas that is only partly burned leaves the burner as CO. While it goes up the flue nobody notices, and a joint or seal that fails later lets the same gas into the room.")]
[Serves(Part.Analysis)]
[Uses(LimitIds.CoPpm, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2, LimitIds.MaximumRateLoad)]
[Expects("/combustion/readings")]
[Coverage(Coverage.MayOverReport, "the default was written for commissioning and is used at services")]
public sealed class FlueCoRule : MaximumReadingRule
{
    protected override Verdict JudgeAtMaximum(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.CoPpm, out var co))
            return look.Missing();

        var doubt = look.DoubtOf(visit, reading.CoPpm);
        look.Note(visit.Maker.CoPpmMax);
        var usual = visit.UsualMax(static maker => maker.CoPpmMax, LimitIds.CoPpm);
        var limit = visit.CoLimit();
        if (!limit.Allows(co))
        {
            return look.OverLimit(visit, $"the flue gas at maximum rate shows {co} ppm carbon monoxide, above {limit.Max}",
                    needsDecision: limit.Origin == LimitOrigin.Maker, isMeasuredAgain: visit.After(reading).Any(later => later.CoPpm is { } again && limit.Allows(again)))
                .Against(limit, co, doubt);
        }

        return usual.Allows(co)
            ? look.Pass($"the flue gas at maximum rate shows {co} ppm carbon monoxide, at most {limit.Max}").Against(limit, co, doubt)
            : look.Advisory($"the flue gas at maximum rate shows {co} ppm carbon monoxide: within the maker's {limit.Max}, above the usual {usual.Max}")
                .Against(limit, co, doubt).Warn(Cautions.CarbonMonoxide).Advise("Make sure of the maker's figure in its source, and clean and check the burner.");
    }
}
