using Findings;
using Kernel;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.FlueTypeAgrees), Topic(Topics.Plausibility), CommonPractice]
[Title("A boiler that is recorded as room-sealed has neither a flow test nor a spillage test")]
[Why("Flow and spillage are tested on a flue that is open to the room, and a room-sealed boiler has nowhere to try either. Taken for room-sealed, an open-flued boiler is asked nothing of the air that it takes from the room, and its products can spill there unseen.")]
[Coverage(Coverage.MayUnderReport, "a flue type that is wrong and that no test speaks against is not seen")]
public sealed class FlueTypeAgreesRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/flueType";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Appliance.FlueType) is null)
            return look.NotApplicable($"the record does not say what flue the boiler has");
        if (visit.IsOpenFlued == true)
            return look.Pass($"the boiler is recorded as open-flued");

        var isSpillageTested = look.Note(visit.Record.Flue?.SpillageTestPassed) is not null;
        var isFlowTested = look.Note(visit.Record.Flue?.FlowTestPassed) is not null;
        return isSpillageTested || isFlowTested
            ? look.Missing($"the boiler is recorded as room-sealed, and {(isSpillageTested ? "a spillage test" : "a flow test")} of an open flue beside it", look.Subject).Contradicting(Part.Plate, Part.Draught)
                .Warn(Cautions.CarbonMonoxide).Advise("See where the boiler takes its air from, and put right what is recorded wrongly.")
            : look.Pass($"the boiler is recorded as room-sealed, and no test of an open flue beside it");
    }
}
