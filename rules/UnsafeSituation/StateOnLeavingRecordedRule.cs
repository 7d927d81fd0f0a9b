using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.UnsafeSituation;

[Name(RuleIds.StateOnLeavingRecorded), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(5)"), Cites("IGEM-G-11")]
[Description("The record says how the appliance was left")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class StateOnLeavingRecordedRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/stateOnLeaving";

    protected override Verdict Assess(Visit visit, Look look) => look.Lacks(visit.Record.Appliance.StateOnLeaving, out var state)
        ? look.Missing($"the record does not say whether the appliance was left in use, turned off or disconnected")
        : look.Pass($"the appliance was left {state}");
}
