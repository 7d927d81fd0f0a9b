using Findings;
using Kernel;
using Rules.AmbientAir;
using Rules.Duties;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.FlueFlowTest), Topic(Topics.Flue), Cites("BS-5440", "1"), Cites("GSIUR-1998", "26(9)(a)")]
[Title("An open flue draws: it passes a flow test")]
[Why("Nests, fallen masonry or a collapsed liner can block an open flue with nothing to see in the room. Without draught the products of the first firing have nowhere to go but indoors.")]
[Serves(Part.Draught)]
[Uses(LimitIds.AmbientCo)]
[AppliesBy("/appliance/flueType")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class FlueFlowTestRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override bool? Applies(Visit visit) => visit.IsOpenFlued;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Flue?.FlowTestPassed, out var passed))
            return look.Missing();

        return passed
            ? look.Pass($"the flue passed its flow test")
            : look.Unsafe($"the flue failed its flow test", look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Leave the boiler off until the flue is cleared and draws, then test flow and spillage again.");
    }
}
