using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.PipeworkProtected), Topic(Topics.Tightness), Cites("GSIUR-1998", "7"), Cites("BS-6891")]
[Title("Gas pipework is supported, and sleeved where it passes through walls")]
[Why("Unsupported pipe sags and works at its joints, and bare pipe in a wall can corrode against mortar or plaster. A sleeve also keeps leaking gas from spreading unseen through a cavity.")]
[Serves(Part.Pipework, AtMost = Weight.Should)]
[Coverage(Coverage.MayUnderReport, "size, depth and blocking by dirt are no members")]
public sealed class PipeworkProtectedRule : VisitRule
{
    protected override string SubjectPointer => "/pipework";

    protected override bool? Applies(Visit visit) => visit.Record.JobType is JobType.AnnualService or JobType.Commissioning;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Pipework?.Sleeved, out var sleeved) | look.Lacks(visit.Record.Pipework?.Supported, out var supported))
            return look.Missing();

        return (sleeved, supported) switch
        {
            (true, true) => look.Pass($"the pipework is sleeved and supported"),
            (false, false) => Unprotected("neither sleeved through walls nor supported"),
            (false, true) => Unprotected("not sleeved through walls"),
            (true, false) => Unprotected("not supported"),
        };

        Verdict Unprotected(string how) => look.Advisory($"the gas pipework is {how}")
            .Warn(Cautions.EscapingGas).Advise("Tell the responsible person; sleeve and support the pipework when it is next worked on.");
    }
}
