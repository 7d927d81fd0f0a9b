using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Condensate;

[Id(RuleIds.CondensateRunning), Topic(Topics.Condensate), CommonPractice]
[Title("Condensate is seen running to the drain")]
[Why("Seeing condensate reach the drain shows that trap, pipe and connection are all open. A blockage left behind can send acidic water back into the boiler and bring a call-out.")]
[Serves(Part.Condensate)]
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
