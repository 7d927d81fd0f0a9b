using Findings;
using Kernel;
using Visits;

namespace Benchmarks;

/// <summary>A rule as many are: it reads two members and holds one against a limit.</summary>
/// <typeparam name="T">Any type, so that there are as many rules as are wanted.</typeparam>
[Id("a rule of one kind"), Why("made up"), Title("stands for a rule of the usual length"), Topic(Topics.Water), Uses("cold-fill")]
public sealed class Copy<T> : VisitRule
{
    protected override string SubjectPointer => "/water/coldFillBar";

    protected override bool? Applies(Visit visit) => visit.IsMoreThanALandlordCheck;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.ColdFillBar, out var fill) | look.Lacks(visit.Record.Water?.FilterCleaned, out _))
            return look.Missing();

        var limit = visit.Limits["cold-fill"];
        return (limit.Allows(fill) ? look.Pass($"the cold fill is {fill} bar") : look.Advisory($"the cold fill is {fill} bar, at most {limit.Max}")).Against(limit, fill);
    }
}
