using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.NoAccessRecorded), Topic(Topics.Paperwork), CommonPractice]
[Title("Where nobody got to the boiler or was let work on it, the record says what was tried and what was left")]
[Why("A landlord who cannot get in has to show what was done to reach the tenant, and the tenant has to learn that the boiler was not seen. A bare note of no access shows neither.")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class NoAccessRecordedRule : VisitRule
{
    protected override string SubjectPointer => "/work";

    protected override bool? Applies(Visit visit) => visit.Record.Work?.Result is WorkResult.NoAccess or WorkResult.NoAccessToAppliance or WorkResult.Refused;

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Work?.Tried, out _) | look.Lacks(visit.Record.Work?.LeftBehind, out _)
            ? look.Missing($"nobody got to the boiler or was let work on it, and the record does not say both what was tried and what was left")
            : look.Pass($"the record says what was tried and what was left");
}
