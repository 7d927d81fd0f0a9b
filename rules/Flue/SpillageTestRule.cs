using Findings;
using Kernel;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.SpillageTest), Topic(Topics.Flue), Cites("BS-5440", "1"), Cites("GSIUR-1998", "26(9)(a)")]
[Title("An open flue spills no products, with the fans of the room running")]
[Why("Spillage brings combustion products straight into the room where people are. An extract fan can pull them back down the flue, so a test with the fan off says nothing of the hours when it runs.")]
[AlsoRecordedAt("/ambientCo", "/flue/visualOk", "/flue/spillageTestPassed", "/flue/flowTestPassed", "/flue/effectivenessConfirmed")]
[Serves(Part.Draught)]
[AppliesBy("/appliance/flueType")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class SpillageTestRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override bool? Applies(Visit visit) => visit.IsOpenFlued;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.Record.Flue?.SpillageTestPassed == false)
        {
            look.Note(visit.Record.Flue?.SpillageTestPassed);
            return look.Unsafe($"the open flue spills products into the room", ExpectedClass.ImmediatelyDangerous)
                .Warn(Cautions.RoomAir).Advise("Turn the boiler off and disconnect it with permission; find why the flue spills: flue, air supply or fans.");
        }

        // With the fans on, the test counts whatever fans there are.
        if (visit.Record.Flue is { SpillageTestPassed: true, FansRunningDuringSpillage: true })
        {
            look.Note(visit.Record.Flue?.FansRunningDuringSpillage);
            return look.Pass($"the open flue passed its spillage test with the fans running");
        }

        if (look.Lacks(visit.Record.Flue?.SpillageTestPassed, out _) | look.Lacks(visit.Record.Ventilation?.ExtractFanInRoom, out var fan))
            return look.Missing();
        if (fan && look.Lacks(visit.Record.Flue?.FansRunningDuringSpillage, out _))
            return look.Missing();

        return fan
            ? look.Missing($"the spillage test was made with the extract fan off, so it does not count", "/flue/fansRunningDuringSpillage").Warn(Cautions.CarbonMonoxide)
            : look.Pass($"the open flue passed its spillage test");
    }
}
