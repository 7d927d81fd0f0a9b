using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Combustion;

[Name(RuleIds.FlueTestPointClosed), Topic(Topics.Joints), Cites("BS-7967"), Cites("GSIUR-1998", "26(9)(a)")]
[Description("The flue sampling point is closed again")]
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
