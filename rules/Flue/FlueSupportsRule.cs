using Findings;
using Kernel;
using Rules.AmbientAir;
using Rules.Duties;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.FlueSupports), Topic(Topics.Flue), Cites("GSIUR-1998", "26(9)(a)"), CommonPractice]
[Title("Brackets and screws of the flue are all there and hold, so that no joint can part")]
[Why("Missing brackets or screws let a flue sag until a joint pulls open. On a condensing boiler a sag also holds water in the flue and narrows the way out.")]
[Serves(Part.FlueSupports)]
[Uses(LimitIds.AmbientCo)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class FlueSupportsRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Flue?.SupportsOk, out var hold))
            return look.Missing();

        return hold
            ? look.Pass($"the supports of the flue hold")
            : look.Unsafe($"the supports of the flue do not hold: a joint can part", look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Fit the brackets and screws that the maker asks for, and check every joint.");
    }
}
