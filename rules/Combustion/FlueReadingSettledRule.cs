using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Combustion;

[Name(RuleIds.FlueReadingSettled), Topic(Topics.Combustion), CommonPractice]
[Description("The boiler has run steadily for long enough before the flue is read")]
[Coverage(Coverage.MayOverReport, "some boilers settle sooner")]
public sealed class FlueReadingSettledRule : AnalysisRule
{
    protected override Verdict Judge(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Combustion?.SettledMinutes, out var minutes))
            return look.Missing();

        var limit = visit.Limits[LimitIds.SettledMinutes];
        return (limit.Allows(minutes)
            ? look.Pass($"the boiler ran {minutes} minutes before the reading, at least {limit.Min}")
            : look.Advisory($"the boiler ran {minutes} minutes before the reading, less than {limit.Min}")
                .Advise("Let the boiler settle at maximum rate and read the flue again.")).Against(limit, minutes);
    }
}
