using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.HotPressure), Topic(Topics.Water), CommonPractice]
[Title("The pressure of the hot system stays within the usual limit and does not fall below the cold fill")]
[Why("Pressure that climbs hard as the system warms points to a vessel that is flat, waterlogged or too small. A fall on heating points to water being lost or a gauge that was misread, and neither cures itself.")]
[Serves(Part.SealedSystem)]
[Uses(LimitIds.HotPressure)]
[Coverage(Coverage.MayOverReport, "a higher relief setting allows more")]
public sealed class HotPressureRule : WaterRule
{
    protected override string SubjectPointer => "/water/hotBar";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.HotBar, out var hot))
            return look.Missing();

        var limit = visit.Limits[LimitIds.HotPressure];
        if (!limit.Allows(hot))
        {
            return look.Advisory($"the hot system shows {hot} bar, above the usual {limit.Max} bar").Against(limit, hot)
                .Warn(Cautions.HotWater).Advise("Check precharge and size of the expansion vessel and the cold fill.");
        }

        if (look.Lacks(visit.Record.Water?.ColdFillBar, out var cold))
            return look.Missing();

        return hot >= cold
            ? look.Pass($"the hot system shows {hot} bar, at most {limit.Max} bar").Against(limit, hot)
            : look.Advisory($"the hot system shows {hot} bar, less than cold: water is lost or one of the readings is wrong")
                .Advise("Read both pressures again and look for a leak.");
    }
}
