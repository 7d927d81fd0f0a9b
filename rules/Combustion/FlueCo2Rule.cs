using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.FlueCo2), Topic(Topics.Combustion), Cites("BS-7967"), Cites("GSIUR-1998", "26(9)(ca)")]
[Description("Carbon dioxide in the flue gas at maximum rate is within the maker's band")]
[Expects("/combustion/readings")]
public sealed class FlueCo2Rule : MaximumReadingRule
{
    protected override Verdict JudgeAtMaximum(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Co2Percent, out var co2))
            return look.Missing();

        // Only the maker can set this band. Boilers without a premix burner often have none.
        if (look.Lacks(visit.Maker.Co2PercentMin, out var min) | look.Lacks(visit.Maker.Co2PercentMax, out var max))
        {
            return visit.Appliance.Condensing == false
                ? look.Advisory($"the flue gas shows {co2} % carbon dioxide, and no band of the maker is recorded to judge it by")
                : look.Missing($"the flue gas shows {co2} % carbon dioxide, and the maker's band is not recorded");
        }

        var doubt = look.DoubtOf(visit, reading.Co2Percent);
        var band = LimitSheet.Maker(min, max, "%", visit.Maker.Source);
        return band.Allows(co2)
            ? look.Pass($"the flue gas at maximum rate shows {co2} % carbon dioxide, within the maker's {min} to {max}").Against(band, co2, doubt)
            : look.OffTheSetting(visit, $"the flue gas at maximum rate shows {co2} % carbon dioxide, outside the maker's {min} to {max}",
                    isMeasuredAgain: visit.After(reading).Any(later => later.Co2Percent is { } again && band.Allows(again)))
                .Against(band, co2, doubt);
    }
}
