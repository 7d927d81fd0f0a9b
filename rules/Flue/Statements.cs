using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Flue;

[Topic(Topics.Flue)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.FlueExamined), Cites("GSIUR-1998", "26(9)(a)"), Cites("GSIUR-1998", "27")]
    [Title("The flue is looked over after any work and is sound")]
    [Why("Corrosion, damage or a joint pulled apart lets combustion products out before they reach the terminal. Work on a boiler can disturb its flue, and regulation 26(9) calls for it to be examined straight afterwards.")]
    [AlsoRecordedAt("/flue")]
    [Serves(Part.Flue)]
    [Uses(LimitIds.AmbientCo)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement FlueExamined => Ask(
        visit => visit.Record.Flue?.VisualOk,
        yes: Pass("the flue was looked over and is sound"),
        no: Unsafe("the flue was looked over and is not sound", expected: RoomAir.ClassOfEscapingProducts,
            warn: Cautions.CarbonMonoxide, advise: "Put the flue right by the maker's instructions with the boiler off, and examine it again."));

    [Id(RuleIds.FlueSupports), Cites("GSIUR-1998", "26(9)(a)"), CommonPractice]
    [Title("Brackets and screws of the flue are all there and hold, so that no joint can part")]
    [Why("Missing brackets or screws let a flue sag until a joint pulls open. On a condensing boiler a sag also holds water in the flue and narrows the way out.")]
    [AlsoRecordedAt("/flue/visualOk")]
    [Serves(Part.FlueSupports)]
    [Uses(LimitIds.AmbientCo)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement FlueSupports => Ask(
        visit => visit.Record.Flue?.SupportsOk,
        yes: Pass("the supports of the flue hold"),
        no: Unsafe("the supports of the flue do not hold: a joint can part", expected: RoomAir.ClassOfEscapingProducts,
            warn: Cautions.CarbonMonoxide, advise: "Fit the brackets and screws that the maker asks for, and check every joint."));

    [Id(RuleIds.FlueFlowTest), Cites("BS-5440", "1"), Cites("GSIUR-1998", "26(9)(a)")]
    [Title("An open flue draws: it passes a flow test")]
    [Why("Nests, fallen masonry or a collapsed liner can block an open flue with nothing to see in the room. Without draught the products of the first firing have nowhere to go but indoors.")]
    [AlsoRecordedAt("/ambientCo", "/flue/visualOk", "/flue/spillageTestPassed", "/flue/flowTestPassed", "/flue/effectivenessConfirmed")]
    [Serves(Part.Draught)]
    [Uses(LimitIds.AmbientCo), AppliesBy("/appliance/flueType")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement FlueFlowTest => Ask(
        visit => visit.Record.Flue?.FlowTestPassed, applies: visit => visit.IsOpenFlued,
        yes: Pass("the flue passed its flow test"),
        no: Unsafe("the flue failed its flow test", expected: RoomAir.ClassOfEscapingProducts,
            warn: Cautions.CarbonMonoxide, advise: "Leave the boiler off until the flue is cleared and draws, then test flow and spillage again."));
}
