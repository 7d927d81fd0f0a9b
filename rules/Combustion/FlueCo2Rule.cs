using Calculations;
using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

[Id(RuleIds.FlueCo2), Topic(Topics.Combustion), Cites("BS-7967"), Cites("GSIUR-1998", "26(9)(ca)")]
[Title("Carbon dioxide in the flue gas at maximum rate is within the maker's band, and one without a source carries only what is usual")]
[Why("The share of CO2 shows how gas and air are mixed at the burner. With too little air it makes CO, and with too much the flame can lift and heat is lost up the flue.")]
[Serves(Part.Analysis)]
[Serves(Part.Analysis, AtMost = Weight.Should, Of = "/makerLimits/co2PercentMin")]
[Serves(Part.Analysis, AtMost = Weight.Should, Of = "/makerLimits/co2PercentMax")]
[Uses(LimitIds.FlueCo2Usual, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2, LimitIds.MaximumRateLoad)]
[Expects("/combustion/readings")]
[Coverage(Coverage.MayUnderReport, "without the maker's band nothing is judged")]
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
                ? look.NotApplicable($"no band of the maker is recorded, and many boilers without a premix burner have none")
                : look.Missing($"the flue gas shows {co2} % carbon dioxide, and the maker's band is not recorded");
        }

        if (min > max)
            return look.Missing($"the record's band of the maker and that of the stored profile do not meet, and the record does not say where its own stands", "/makerLimits/source");

        // No burner sets free no CO2, or more than its fuel can give: a band that reaches so far bounds nothing.
        var most = visit.GasFamily.Co2MaxPercent();
        if (min <= 0 || max > most)
        {
            return look.Missing($"the maker's band is recorded as {min} to {max} % carbon dioxide, and no maker sets one from 0 or beyond the {most} % that {visit.Fuel} can give",
                [.. min <= 0 ? ["/makerLimits/co2PercentMin"] : Array.Empty<string>(), .. max > most ? ["/makerLimits/co2PercentMax"] : Array.Empty<string>()])
                .Advise("Read the band in the maker's instructions again, for this gas.");
        }

        var doubt = look.DoubtOf(visit, reading.Co2Percent);
        var source = visit.MakersSourceOf(static maker => maker.Co2PercentMax);
        var isSourced = !string.IsNullOrWhiteSpace(source) && !string.IsNullOrWhiteSpace(visit.MakersSourceOf(static maker => maker.Co2PercentMin));
        var band = LimitSheet.Maker(min, max, "%", isSourced ? source : null);
        if (!band.Allows(co2))
        {
            return look.OffTheSetting(visit, $"the flue gas at maximum rate shows {co2} % carbon dioxide, outside the maker's {min} to {max}",
                    isMeasuredAgain: visit.After(reading).Any(later => later.Co2Percent is { } again && band.Allows(again)))
                .Against(band, co2, doubt);
        }

        FormattableString found = $"the flue gas at maximum rate shows {co2} % carbon dioxide, within the maker's {min} to {max}";
        var usual = visit.Limits[LimitIds.FlueCo2Usual];
        if (!usual.Allows(co2) && (visit.Appliance.Condensing != false || !isSourced))
        {
            // A band from nowhere carries no more than what is usual; older boilers burn with far more air, and often have none.
            var verdict = !isSourced && visit.Appliance.Condensing != false
                ? look.Missing($"{found}; the record does not say where that band stands, and {usual.Min} to {usual.Max} is usual", "/makerLimits/source")
                : look.Advisory($"{found}, and outside the usual {usual.Min} to {usual.Max}");
            return verdict.Against(usual, co2, doubt).Warn(Cautions.CarbonMonoxide)
                .Advise("Make sure of the maker's band in its source, and that the sample was of undiluted flue gas.");
        }

        return OfProfile(visit) is { } stored && !stored.Allows(co2)
            ? look.Advisory($"{found}, and outside the band of the stored profile").Against(stored, co2, doubt)
                .Advise("Make sure of the maker's band in its source, and correct the record or the profile.")
            : look.Pass($"{found}").Against(band, co2, doubt);
    }

    private static Limit? OfProfile(Visit visit) => visit.Lookup.ProfileLimits is { } stored
        ? LimitSheet.Maker(stored.Co2PercentMin, stored.Co2PercentMax, "%", stored.Source)
        : null;
}
