using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Condensate;

[Name(RuleIds.CondensateRunning), Topic(Topics.Condensate), CommonPractice]
[Description("Condensate is seen running to the drain")]
[AppliesBy("/appliance/condensing")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class CondensateRunningRule : VisitRule
{
    protected override string SubjectPointer => "/condensate";

    protected override bool? Applies(Visit visit) => visit.IsAnnualService & visit.Appliance.Condensing;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Condensate?.SeenRunning, out var running))
            return look.Missing();

        return running
            ? look.Pass($"condensate was seen running")
            : look.Advisory($"condensate was not seen running").Advise("Run the boiler until condensate flows, and follow it to the drain.");
    }
}
