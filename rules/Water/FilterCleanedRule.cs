using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Water;

[Name(RuleIds.FilterCleaned), Topic(Topics.Water), Cites("BS-7593"), CommonPractice]
[Description("The filter of the heating system is cleaned at each service")]
[InForce(From = "2019-06-01")]
[Coverage(Coverage.MayOverReport, "a system without a filter is advised about as well")]
public sealed class FilterCleanedRule : WaterRule
{
    protected override string SubjectPointer => "/water/filterCleaned";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.FilterCleaned, out var isCleaned))
            return look.Missing();

        return isCleaned
            ? look.Pass($"the system filter was cleaned")
            : look.Advisory($"the system filter was not cleaned, or there is none").Advise("Clean the filter, or propose one where none is fitted.");
    }
}
