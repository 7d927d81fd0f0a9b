using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Combustion;

[Id(RuleIds.FlueTestPointClosed), Topic(Topics.Joints), Cites("BS-7967"), Cites("GSIUR-1998", "26(9)(a)")]
[Title("The flue sampling point is closed again")]
[Why("Left open, a sampling point lets flue gas out for as long as the boiler runs. The cap comes off for each analysis and is easily forgotten when the tools go back in the bag.")]
[Serves(Part.FlueTestPoint)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class FlueTestPointClosedRule : VisitRule
{
    protected override string SubjectPointer => "/combustion";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Combustion?.TestPointClosed, out var closed))
            return look.Missing();

        return closed
            ? look.Pass($"the flue sampling point was closed again")
            : look.Unsafe($"the flue sampling point was left open", ExpectedClass.ImmediatelyDangerous)
                .Warn(Cautions.CarbonMonoxide).Advise("Close the sampling point with its cap and seal, and check round it with the boiler running.");
    }
}
