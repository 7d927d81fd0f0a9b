using Findings;
using Kernel;
using Rules.AmbientAir;
using Rules.Duties;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.FlueExamined), Topic(Topics.Flue), Cites("GSIUR-1998", "26(9)(a)"), Cites("GSIUR-1998", "27")]
[Title("The flue is looked over after any work and is sound")]
[Why("Corrosion, damage or a joint pulled apart lets combustion products out before they reach the terminal. Work on a boiler can disturb its flue, and regulation 26(9) calls for it to be examined straight afterwards.")]
[Serves(Part.Flue)]
[Uses(LimitIds.AmbientCo)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class FlueExaminedRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Flue?.VisualOk, out var sound))
            return look.Missing();

        return sound
            ? look.Pass($"the flue was looked over and is sound")
            : look.Unsafe($"the flue was looked over and is not sound", look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Put the flue right by the maker's instructions with the boiler off, and examine it again.");
    }
}
