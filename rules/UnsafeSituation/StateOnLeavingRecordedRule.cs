using Findings;
using Kernel;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.StateOnLeavingRecorded), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(5)"), Cites("IGEM-G-11")]
[Title("The record says how the appliance was left")]
[Why("Running, turned off or disconnected: how the boiler was left decides whether a fault can still hurt anyone. With nothing written down, the occupier may relight it and the next engineer starts from a guess.")]
[Serves(Part.Left)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class StateOnLeavingRecordedRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/stateOnLeaving";

    protected override Verdict Assess(Visit visit, Look look) => look.Lacks(visit.Record.Appliance.StateOnLeaving, out var state)
        ? look.Missing($"the record does not say whether the appliance was left in use, turned off or disconnected")
        : look.Pass($"the appliance was left {state}");
}
