using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

[Id(RuleIds.ReadingsAtBothRates), Topic(Topics.Combustion), Cites("BS-7967", "12")]
[Title("After the work the flue is read at maximum rate, and on a boiler that modulates at minimum rate too")]
[Why("A modulating boiler spends much of its life well below maximum rate. Its gas and air can be well matched at one end of the range and badly at the other, and one reading shows one end only.")]
[Serves(Part.Analysis)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2)]
[Coverage(Coverage.MayOverReport, "not every maker asks for the minimum rate")]
public sealed class ReadingsAtBothRatesRule : AnalysisRule
{
    protected override Verdict Judge(Visit visit, Look look)
    {
        if (!visit.StatedAt(FiringRate.Maximum).Any())
            return look.Missing($"no flue reading is stated as taken at maximum rate after the work", "/combustion/readings");

        // A condensing boiler modulates; only one stated not to be condensing may have a single rate.
        if (visit.StatedAt(FiringRate.Minimum).Any())
            return look.Pass($"the flue was read at maximum and at minimum rate after the work");

        return look.Note(visit.Record.Appliance.Condensing) == false
            ? look.Pass($"the flue was read at maximum rate after the work")
            : look.Advisory($"the flue was not read at minimum rate after the work")
                .Advise("Read the flue at minimum rate as well where the maker's instructions ask for it.");
    }
}
