using Findings;
using Kernel;
using Visits;

namespace Rules.Condensate;

[Id(RuleIds.CondensateFall), Topic(Topics.Condensate), CommonPractice]
[Title("A condensate pipe whose fall was measured falls enough")]
[Why("Water lies in a condensate pipe that runs level or sags. Sludge gathers there, frost takes hold there, and the boiler can be stopped by its own condensate.")]
[Serves(Part.Condensate)]
[Uses(LimitIds.CondensateFall)]
[AppliesBy("/appliance/condensing")]
[Coverage(Coverage.MayUnderReport, "judged only where the fall was measured")]
public sealed class CondensateFallRule : VisitRule
{
    protected override string SubjectPointer => "/condensate";

    protected override bool? Applies(Visit visit) => visit.Appliance.Condensing;

    protected override Verdict Assess(Visit visit, Look look)
    {
        // Few pipes are measured. What every record shows is whether condensate runs, and that stands in for the fall.
        if (look.Note(visit.Record.Condensate?.FallMmPerM) is not { } fall)
        {
            if (look.Lacks(visit.Record.Condensate?.SeenRunning, out var running))
                return look.Missing();

            return running ? look.Pass($"condensate was seen running") : look.Advisory($"the fall of the condensate pipe was not measured, nor condensate seen running");
        }

        var limit = visit.Limits[LimitIds.CondensateFall];
        return (limit.Allows(fall)
            ? look.Pass($"the condensate pipe falls {fall} mm for each metre, at least {limit.Min}")
            : look.Advisory($"the condensate pipe falls {fall} mm for each metre, less than {limit.Min}").Advise("Lay the pipe to a steady fall."))
            .Against(limit, fall);
    }
}
