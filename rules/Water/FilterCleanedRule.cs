using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Water;

[Id(RuleIds.FilterCleaned), Topic(Topics.Water), Cites("BS-7593"), CommonPractice]
[Title("The filter of the heating system is cleaned at each service")]
[Why("Sludge and magnetite build up in a filter until it slows the flow or stops catching dirt. Emptying it at each service protects the heat exchanger and shows how fast the system is corroding.")]
[Serves(Part.Water)]
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
