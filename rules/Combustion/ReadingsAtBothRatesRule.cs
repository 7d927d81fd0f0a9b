using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.Combustion;

[Name(RuleIds.ReadingsAtBothRates), Topic(Topics.Combustion), Cites("BS-7967", "12")]
[Description("After the work the flue is read at maximum rate, and on a boiler that modulates at minimum rate too")]
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
